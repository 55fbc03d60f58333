package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogTimeTest {

    @Test
    void clocksWithAnOffsetAreComparedByUtc() {
        LogTime perth = LogTime.parse("2026-03-01T06:40+08:00");
        LogTime utc = LogTime.parse("2026-02-28T22:45:30Z");

        assertEquals(Duration.ofSeconds(330), perth.until(utc));
        assertTrue(perth.isBefore(utc));
        assertFalse(utc.isBefore(utc));
        assertEquals("2026-03-01T06:40+08:00", perth.toString());
    }

    @Test
    void clocksWithoutAnOffsetAreThoseOfOneSite() {
        LogTime one = LogTime.parse("2026-03-01T06:40");
        LogTime other = LogTime.parse("2026-03-01T06:39:59");

        assertEquals(Duration.ofSeconds(-1), one.until(other));
        assertFalse(one.isComparableTo(LogTime.parse("2026-03-01T06:40Z")));
        assertThrows(IllegalArgumentException.class, () -> one.until(LogTime.parse("2026-03-01T06:40Z")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2026-03-01", "06:40", "2026-03-01 06:40", "2026-02-30T06:40", "01/03/2026 06:40"})
    void whatIsNoDateAndTimeIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> LogTime.parse(text));
    }
}
