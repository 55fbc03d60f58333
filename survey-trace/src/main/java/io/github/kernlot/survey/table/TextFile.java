package io.github.kernlot.survey.table;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The text of one file. Bytes that are not UTF-8 become lone low surrogates, which no valid text holds, so that the place of each
 * is found again when the text has been taken apart.
 */
final class TextFile {

    private static final int STRAY = 0xDC00;
    private static final long GREATEST_SIZE = 1L << 29;
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private TextFile() {}

    static boolean exists(Path folder, String file) {
        return Files.exists(folder.resolve(file), LinkOption.NOFOLLOW_LINKS);
    }

    /** The text without its byte-order mark; empty, with a fault added, where there is none to be read. */
    static Optional<String> read(Path folder, String file, FaultList faults) {
        Path path = folder.resolve(file);
        if (!exists(folder, file)) {
            faults.ofFile(file, "the file is missing from " + folder);
        } else if (!Files.isRegularFile(path)) {
            faults.ofFile(file, Files.isDirectory(path) ? "is a folder, expected a file" : "expected a file");
        } else {
            try {
                if (Files.size(path) > GREATEST_SIZE) {
                    faults.ofFile(file, "the file is too large, expected at most " + GREATEST_SIZE + " bytes");
                    return Optional.empty();
                }
                return text(Files.readAllBytes(path), file, faults);
            } catch (IOException unreadable) {
                faults.ofFile(
                        file,
                        "the file cannot be read (" + unreadable.getClass().getSimpleName() + ")");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> text(byte[] bytes, String file, FaultList faults) {
        if (isWide(bytes)) {
            faults.ofFile(file, "the file is UTF-16 text, expected UTF-8");
            return Optional.empty();
        }
        if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            faults.ofFile(file, "the file is a spreadsheet or an archive, expected plain text in UTF-8");
            return Optional.empty();
        }
        String text = decoded(bytes);
        return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    }

    /** Whether there is a byte-order mark of UTF-16, or every other of the first bytes is 0. */
    private static boolean isWide(byte[] bytes) {
        boolean isMarked = startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE);
        return isMarked || (bytes.length > 3 && ((bytes[0] | bytes[2]) == 0 || (bytes[1] | bytes[3]) == 0));
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i == bytes.length || bytes[i] != (byte) start[i]) {
                return false;
            }
        }
        return true;
    }

    private static String decoded(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        while (result.isError()) {
            for (int i = 0; i < result.length(); i++) {
                out.put((char) (STRAY + (in.get() & 0xFF)));
            }
            result = decoder.decode(in, out, true);
        }
        return out.flip().toString();
    }

    static boolean isStrayByte(int codePoint) {
        return codePoint >= STRAY + 0x80 && codePoint <= STRAY + 0xFF;
    }

    static int strayByte(int codePoint) {
        return codePoint - STRAY;
    }

    static boolean hasStrayByte(String text) {
        return text.codePoints().anyMatch(TextFile::isStrayByte);
    }
}
