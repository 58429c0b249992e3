package slipway.pictures.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slipway.mechanics.body.Limb;
import slipway.pictures.look.Colour;
import slipway.pictures.look.Look;
import slipway.pictures.skeleton.Arm;
import slipway.pictures.skeleton.Body;
import slipway.pictures.skeleton.Flesh;
import slipway.pictures.skeleton.Leg;
import slipway.pictures.skeleton.Solid;
import slipway.pictures.space.Camera;
import slipway.pictures.space.V3;

/**
 * Draws a body. Every group of parts is outlined first and filled afterwards, so that joints melt into one body; the
 * own leg is drawn with full contrast, the other one paler and with a softer line.
 */
final class BodyDrawing {
    /** How far behind the middle of the trunk a limb must be to be hidden by it. */
    private static final double BEHIND = 0.035;

    private final Pen pen;
    private final Body body;

    BodyDrawing(Pen pen, Body body) {
        this.pen = pen;
        this.body = body;
    }

    /** One limb and how near it is to the viewer. */
    private record Piece(Limb limb, boolean leg, double nearness) {}

    void draw(Runnable betweenTrunkAndNearLimbs, Runnable beforeArms) {
        List<Piece> pieces = pieces();
        double trunk = camera().nearness(body.bones().trunk().at(0.45));
        List<Piece> hidden =
                pieces.stream().filter(p -> p.nearness < trunk - BEHIND).toList();
        List<Piece> seen =
                pieces.stream().filter(p -> p.nearness >= trunk - BEHIND).toList();
        hidden.forEach(piece -> limb(piece, piece.limb == Limb.OTHER));
        trunk(seen);
        betweenTrunkAndNearLimbs.run();
        seen.stream().filter(Piece::leg).forEach(piece -> limb(piece, piece.limb == Limb.OTHER));
        beforeArms.run();
        // An arm in front of the trunk is as near as the trunk, whichever side it is of.
        seen.stream().filter(p -> !p.leg).forEach(piece -> limb(piece, false));
    }

    private Camera camera() {
        return pen.camera();
    }

    private List<Piece> pieces() {
        var pieces = new ArrayList<Piece>();
        for (Limb limb : Limb.values()) {
            Leg leg = body.bones().leg(limb);
            pieces.add(new Piece(limb, true, nearness(leg.hip(), leg.knee(), leg.ankle())));
            Arm arm = body.arm(limb);
            pieces.add(new Piece(limb, false, nearness(arm.shoulder(), arm.elbow(), arm.wrist())));
        }
        pieces.sort(Comparator.comparingDouble(Piece::nearness));
        return pieces;
    }

    private double nearness(V3 a, V3 b, V3 c) {
        return (camera().nearness(a) + camera().nearness(b) + camera().nearness(c)) / 3;
    }

    private Look look() {
        return pen.look();
    }

    private void limb(Piece piece, boolean far) {
        if (piece.leg) {
            leg(body.bones().leg(piece.limb), far);
        } else {
            arm(body.arm(piece.limb), far);
        }
    }

    private Colour line(boolean far) {
        Colour ink = look().palette().ink();
        return far ? ink.mixed(look().palette().paper(), 0.45) : ink;
    }

    private static String width(boolean far) {
        return far ? Pen.FAR_LINE : Pen.NEAR_LINE;
    }

    private Colour tone(Colour colour, boolean far) {
        return far ? look().far(colour) : colour;
    }

    private void leg(Leg leg, boolean far) {
        Solid shorts = Flesh.shortsLeg(leg);
        var skin = new ArrayList<>(pen.closed(Flesh.foot(leg)));
        skin.add(pen.closed(Flesh.shank(leg)));
        skin.add(pen.closed(Flesh.bareThigh(leg)));
        pen.strokes(skin, line(far), width(far));
        pen.fills(skin, tone(look().skin(), far));
        pen.strokes(List.of(pen.openFrom(shorts, 2)), line(far), width(far));
        pen.fills(List.of(pen.closed(shorts)), tone(look().shorts(), far));
    }

    private void arm(Arm arm, boolean far) {
        Solid sleeve = Flesh.sleeve(arm);
        var skin = new ArrayList<>(pen.closed(Flesh.hand(arm)));
        skin.add(pen.closed(Flesh.forearm(arm)));
        skin.add(pen.closed(Flesh.bareUpperArm(arm)));
        pen.strokes(skin, line(far), width(far));
        pen.fills(skin, tone(look().skin(), far));
        pen.strokes(List.of(pen.openFrom(sleeve, 1)), line(far), width(far));
        pen.fills(List.of(pen.closed(sleeve)), tone(look().top(), far));
    }

    /** Trunk, neck and head; limbs in front of it lend their outline, so that hip and shoulder melt into it. */
    private void trunk(List<Piece> attached) {
        Solid shirt = Flesh.shirt(body.bones().trunk());
        Solid shorts = Flesh.shortsTop(body.bones().trunk());
        String neck = pen.closed(Flesh.neck(body.bones()));
        var head = new HeadDrawing(pen, body.bones());
        for (Piece piece : attached) {
            boolean far = piece.leg && piece.limb == Limb.OTHER;
            Solid root = piece.leg ? Flesh.shortsLeg(body.bones().leg(piece.limb)) : Flesh.sleeve(body.arm(piece.limb));
            pen.strokes(List.of(pen.closed(root)), line(far), width(far));
        }
        var outlines = new ArrayList<>(List.of(neck, pen.closed(shirt), pen.closed(shorts)));
        pen.strokes(outlines, line(false), Pen.NEAR_LINE);
        pen.fills(List.of(neck), look().skin());
        pen.fills(List.of(pen.closed(shorts)), look().shorts());
        pen.fills(List.of(pen.closed(shirt)), look().top());
        pen.strokes(head.outlines(), line(false), Pen.NEAR_LINE);
        pen.fills(List.of(neck), look().skin());
        head.fill();
    }
}
