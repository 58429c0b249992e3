package slipway.documents.pdf;

/** Sizes of paper. */
public enum Paper {
    /** 210 by 297 mm. */
    A4(210, 297),
    /** 8.5 by 11 inches. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** Value of the {@code size} property of a page style. */
    String cssSize() {
        return widthMm + "mm " + heightMm + "mm";
    }
}
