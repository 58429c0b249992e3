package slipway.documents.sheet;

import java.util.List;

/**
 * Where the two pictures of an exercise stand and how large they may be, each.
 *
 * @param beside above the steps with the dose boxes to their right, so that two exercises share a page; otherwise
 *     across the whole page
 */
record PictureLayout(boolean beside, double widthMm, double heightMm) {
    /** What to try, the best looking first. */
    static List<PictureLayout> choices(HomeSheet sheet, SheetFormat format) {
        double acrossMm = (format.paper().widthMm() - 32) * 0.47;
        double besideMm = acrossMm * 0.6;
        boolean roomForTwo =
                format.type() == SheetFormat.Type.NORMAL && sheet.exercises().size() > 1;
        return roomForTwo
                ? List.of(new PictureLayout(true, besideMm, 26), new PictureLayout(true, besideMm, 20))
                : List.of(
                        new PictureLayout(false, acrossMm, 42),
                        new PictureLayout(false, acrossMm, 32),
                        new PictureLayout(false, acrossMm, 22),
                        // Large type on the shorter paper: an exercise with long texts fits only in columns.
                        new PictureLayout(true, besideMm, 26));
    }
}
