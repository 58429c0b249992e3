package slipway.pictures.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import slipway.pictures.space.P2;

/** Writes where the joints of the known figures are, for {@link FigureGoldenTest}: run it after a wanted change. */
final class GoldenGeometry {
    static final List<String> JOINTS =
            List.of("hips", "neck", "head", "knee", "ankle", "toe", "wrist", "other-ankle", "other-wrist");

    private GoldenGeometry() {}

    public static void main(String[] args) throws IOException {
        var csv = new StringBuilder(
                "# Joints of known figures in the picture, fractions of stature; written by GoldenGeometry, looked at on the contact sheet.\nfigure,joint,x,y\n");
        Postures.all().forEach((name, scene) -> {
            FigureGeometry geometry = Figure.of(scene).geometry();
            for (String joint : JOINTS) {
                P2 p = geometry.joint(joint);
                csv.append(String.format(Locale.ROOT, "\"%s\",%s,%.4f,%.4f\n", name, joint, p.x(), p.y()));
            }
        });
        Files.writeString(Path.of(args[0]), csv);
    }
}
