package slipway.documents.guide;

/** One tap to call, where the number is one that a phone can dial. */
final class Calls {
    private Calls() {}

    static void add(Html html, String number, GuideTexts texts, String style) {
        if (number.matches("\\+?[0-9][0-9 ()./-]*")) {
            String dialled = number.replaceAll("[^+0-9]", "");
            html.line("a", texts.own().get("stop.dial", number), "href", "tel:" + dialled, "class", style);
        }
    }
}
