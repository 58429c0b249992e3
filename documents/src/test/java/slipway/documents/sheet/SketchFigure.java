package slipway.documents.sheet;

import java.util.Locale;
import slipway.documents.pdf.Svg;

/** A rough drawing of someone lying on the back, for tests of the paper only. */
final class SketchFigure {
    private SketchFigure() {}

    /** Side view; hip and knee flexion and ankle dorsiflexion of the moving leg in degrees. */
    static Svg lying(double hipDeg, double kneeDeg, double ankleDeg) {
        double hip = Math.toRadians(hipDeg);
        double shin = Math.toRadians(hipDeg - kneeDeg);
        double foot = shin + Math.toRadians(90 + ankleDeg);
        double kneeX = 210 + 88 * Math.cos(hip);
        double kneeY = 188 - 88 * Math.sin(hip);
        double ankleX = kneeX + 84 * Math.cos(shin);
        double ankleY = kneeY - 84 * Math.sin(shin);
        double toeX = ankleX + 36 * Math.cos(foot);
        double toeY = ankleY - 36 * Math.sin(foot);
        return Svg.parse(String.format(
                Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 440 230" fill="none"
                     stroke-linecap="round" stroke-linejoin="round">
                  <path d="M20 206H420" stroke="#5f7f8c" stroke-width="3"/>
                  <path d="M210 190L300 190L384 192L388 160" stroke="#9aa5ab" stroke-width="20"/>
                  <path d="M90 178L212 184" stroke="#5f7f8c" stroke-width="44"/>
                  <circle cx="48" cy="172" r="26" fill="#d9b79a" stroke="#22303a" stroke-width="3"/>
                  <path d="M210 188L%.1f %.1fL%.1f %.1fL%.1f %.1f" stroke="#22303a" stroke-width="28"/>
                  <path d="M210 188L%.1f %.1fL%.1f %.1fL%.1f %.1f" stroke="#d9b79a" stroke-width="22"/>
                </svg>""", kneeX, kneeY, ankleX, ankleY, toeX, toeY, kneeX, kneeY, ankleX, ankleY, toeX, toeY));
    }
}
