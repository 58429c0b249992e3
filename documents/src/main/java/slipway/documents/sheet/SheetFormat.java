package slipway.documents.sheet;

import slipway.documents.pdf.Paper;

/** Paper and size of type of a sheet. */
public record SheetFormat(Paper paper, Type type) {
    /** Size of type. Nothing on a sheet is set smaller than this. */
    public enum Type {
        /** 12 points. */
        NORMAL(12),
        /** 16 points, for whoever sees poorly. */
        LARGE(16);

        private final int points;

        Type(int points) {
            this.points = points;
        }

        int points() {
            return points;
        }
    }
}
