package slipway.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTest {
    private static String svg(String inside) {
        return "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
                + " viewBox='0 0 40 20'>" + inside + "</svg>";
    }

    @Test
    void readsTheViewBoxAndRefersInsideItself() {
        Svg drawing = Svg.parse(svg("<path id='a' d='M0 0h9' fill='url(#g)'/><use href='#a'/>"));
        assertThat(drawing.width()).isEqualTo(40);
        assertThat(drawing.height()).isEqualTo(20);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>1</script>",
                "<image href='http://clinic.example/a.png'/>",
                "<use xlink:href='http://clinic.example/a.svg#x'/>",
                "<path onclick='go()' d='M0 0'/>",
                "<path style='fill: url( http://clinic.example/#g)'/>",
                "<style>@import 'http://clinic.example/a.css'</style>",
                "<foreignObject/>"
            })
    void refusesWhatReachesOutOrRuns(String inside) {
        assertThatThrownBy(() -> Svg.parse(svg(inside)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must not");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "no drawing",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'>",
                "<svg viewBox='0 0 1 1'/>",
                "<svg xmlns='http://www.w3.org/2000/svg'/>",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 NaN 1'/>",
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 -4 1'/>",
                "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/hostname'>]>"
                        + "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'>&x;</svg>"
            })
    void refusesWhatIsNoDrawing(String markup) {
        assertThatThrownBy(() -> Svg.parse(markup)).isInstanceOf(IllegalArgumentException.class);
    }
}
