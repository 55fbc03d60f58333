package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A path of circular arcs between stations, as a tool with a desurvey of its own would bring it: what the reference line needs. */
public record BentPath(NavigableMap<Double, HoleDirection> stations) implements HolePath {

    /** A path from rows of depth, plunge and azimuth. */
    public static BentPath ofPlunges(double[]... rows) {
        NavigableMap<Double, HoleDirection> stations = new TreeMap<>();
        for (double[] row : rows) {
            stations.put(row[0], HoleDirection.ofPlunge(row[1], row[2]));
        }
        return new BentPath(stations);
    }

    @Override
    public HoleDirection directionAt(double depth) {
        Map.Entry<Double, HoleDirection> upper = stations.floorEntry(depth);
        Map.Entry<Double, HoleDirection> lower = stations.higherEntry(depth);
        if (lower == null || upper.getKey() == depth) {
            return upper.getValue();
        }
        Vector3D from = vector(upper.getValue());
        Vector3D to = vector(lower.getValue());
        double angle = Vector3D.angle(from, to) * (depth - upper.getKey()) / (lower.getKey() - upper.getKey());
        Vector3D there = angle == 0
                ? from
                : new Rotation(from.crossProduct(to), angle, RotationConvention.VECTOR_OPERATOR).applyTo(from);
        return HoleDirection.ofVector(there.getX(), there.getY(), there.getZ());
    }

    private static Vector3D vector(HoleDirection direction) {
        return new Vector3D(direction.north(), direction.east(), direction.down());
    }

    @Override
    public CoreFrame carriedFrameAt(double depth) {
        CoreFrame frame = CoreFrame.carriedTo(stations.firstEntry().getValue());
        for (HoleDirection station : stations.headMap(depth, true).values()) {
            frame = frame.carriedAlong(station);
        }
        return frame.carriedAlong(directionAt(depth));
    }

    @Override
    public Displacement displacementAt(double depth) {
        throw new UnsupportedOperationException("the reference line asks for no place");
    }

    @Override
    public double scribeTurn(double from, double to) {
        throw new UnsupportedOperationException("the reference line asks for no turn");
    }
}
