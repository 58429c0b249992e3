package slipway.pictures.drawing;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.look.Colour;
import slipway.pictures.space.P2;
import slipway.pictures.svg.PathData;

/** The arrow of a movement: along the way of the point that moves most, somewhat outside the body. */
final class Arrow {
    private static final int POINTS = 12;
    private static final double HEAD_LENGTH = 0.050;
    private static final double HEAD_HALF = 0.026;

    private Arrow() {}

    /** The line of the arrow for a way of a point: one plain bow, pushed away from the middle of the body. */
    static List<P2> line(List<P2> way, P2 middle, double aside) {
        P2 start = way.get(0);
        P2 end = way.get(way.size() - 1);
        P2 half = way.get(way.size() / 2);
        P2 chord = end.minus(start);
        double length = Math.max(1e-9, chord.length());
        double turn = chord.x() * (middle.y() - half.y()) - chord.y() * (middle.x() - half.x());
        double side = (turn > 0 ? -aside : aside) / length;
        P2 outwards = new P2(-chord.y() * side, chord.x() * side);
        P2 from = start.plus(outwards, 1);
        P2 to = end.plus(outwards, 1);
        P2 top = half.plus(outwards, 1);
        P2 handle = new P2(2 * top.x() - 0.5 * (from.x() + to.x()), 2 * top.y() - 0.5 * (from.y() + to.y()));
        var line = new ArrayList<P2>();
        for (int i = 0; i <= POINTS; i++) {
            double u = (double) i / POINTS;
            line.add(from.towards(handle, u).towards(handle.towards(to, u), u));
        }
        return line;
    }

    static void draw(Pen pen, List<P2> line) {
        double whole = 0;
        for (int i = 1; i < line.size(); i++) {
            whole += line.get(i).distance(line.get(i - 1));
        }
        draw(pen, line, Math.min(1, whole / 0.11));
    }

    private static void draw(Pen pen, List<P2> line, double size) {
        P2 tip = line.get(line.size() - 1);
        P2 base = tip;
        int keep = line.size() - 1;
        while (keep > 0 && base.distance(tip) < 0.85 * size * HEAD_LENGTH) {
            keep--;
            base = line.get(keep);
        }
        double reach = base.distance(tip);
        P2 along = new P2((tip.x() - base.x()) / Math.max(1e-9, reach), (tip.y() - base.y()) / Math.max(1e-9, reach));
        P2 neck = tip.plus(along, -0.8 * size * HEAD_LENGTH);
        var shaft = new ArrayList<>(line.subList(0, keep + 1));
        if (shaft.get(shaft.size() - 1).distance(neck) > 0.004) {
            shaft.add(neck);
        }
        P2 across = new P2(-along.y(), along.x());
        P2 back = tip.plus(along, -size * HEAD_LENGTH);
        String head = PathData.polygon(
                List.of(tip, back.plus(across, size * HEAD_HALF), back.plus(across, -size * HEAD_HALF)));
        Colour accent = pen.look().palette().accent();
        Colour paper = pen.look().palette().paper();
        String d = shaft.size() > 1 ? PathData.openCurve(shaft) : PathData.polyline(List.of(back, neck));
        pen.svg().open("fill", "none", "stroke", paper.hex(), "stroke-linejoin", "round", "stroke-linecap", "round");
        pen.svg().path(d, "stroke-width", "22").path(head, "stroke-width", "9").close();
        pen.svg().path(d, "fill", "none", "stroke", accent.hex(), "stroke-width", "13", "stroke-linecap", "round");
        pen.svg().path(head, "fill", accent.hex());
    }
}
