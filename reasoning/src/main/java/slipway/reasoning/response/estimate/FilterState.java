package slipway.reasoning.response.estimate;

import java.nio.ByteBuffer;

/** The particles of a person at rest, for storage. Arrays are copied in and out. */
public final class FilterState {
    private static final int VERSION = 1;
    private static final int HEADER_BYTES = 2 * Integer.BYTES + 2 * Long.BYTES;
    private static final int COLUMNS = 4;

    private final long steps;
    private final double leastEffective;
    private final double[][] columns;

    FilterState(
            long steps,
            double leastEffective,
            double[] logTolerance,
            double[] logSettle,
            double[] gain,
            double[] weight) {
        this.steps = steps;
        this.leastEffective = leastEffective;
        this.columns = new double[][] {logTolerance, logSettle, gain, weight};
    }

    long steps() {
        return steps;
    }

    double leastEffective() {
        return leastEffective;
    }

    /** Number of particles. */
    public int size() {
        return columns[0].length;
    }

    void copyTo(double[]... into) {
        for (int c = 0; c < COLUMNS; c++) {
            System.arraycopy(columns[c], 0, into[c], 0, size());
        }
    }

    /** As bytes; {@link #of} reads them. */
    public byte[] bytes() {
        ByteBuffer buffer = ByteBuffer.allocate(HEADER_BYTES + COLUMNS * size() * Double.BYTES);
        buffer.putInt(VERSION).putInt(size()).putLong(steps).putDouble(leastEffective);
        for (double[] column : columns) {
            for (double value : column) {
                buffer.putDouble(value);
            }
        }
        return buffer.array();
    }

    /**
     * From bytes.
     *
     * @throws IllegalArgumentException if they are not such a state, or hold values that no state has
     */
    public static FilterState of(byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        if (bytes.length < HEADER_BYTES || buffer.getInt() != VERSION) {
            throw new IllegalArgumentException("not a stored estimate of version " + VERSION);
        }
        int size = buffer.getInt();
        if (size < 2 || bytes.length != HEADER_BYTES + (long) COLUMNS * size * Double.BYTES) {
            throw new IllegalArgumentException(
                    "a stored estimate of %d particles cannot have %d bytes".formatted(size, bytes.length));
        }
        long steps = buffer.getLong();
        double least = buffer.getDouble();
        double[][] columns = new double[COLUMNS][size];
        for (double[] column : columns) {
            for (int i = 0; i < size; i++) {
                column[i] = buffer.getDouble();
                if (!Double.isFinite(column[i])) {
                    throw new IllegalArgumentException("a stored estimate must be of finite numbers");
                }
            }
        }
        return new FilterState(steps, least, columns[0], columns[1], columns[2], columns[3]);
    }
}
