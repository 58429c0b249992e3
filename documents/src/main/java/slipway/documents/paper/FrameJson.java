package slipway.documents.paper;

import java.time.LocalDate;
import java.util.Optional;
import slipway.documents.pdf.Svg;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What stands around a paper as JSON: names and pictures as they were when it was signed. How it stands is no part. */
final class FrameJson {
    private FrameJson() {}

    static ObjectNode write(PaperFrame frame) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.put("person", frame.person());
        frame.born().ifPresent(day -> node.put("born", day.toString()));
        node.put("clinic", frame.clinic())
                .put("writer", frame.writer())
                .put("to", frame.to())
                .put("mark", frame.mark());
        frame.ruler().ifPresent(picture -> node.set("ruler", picture(picture)));
        frame.course().ifPresent(picture -> node.set("course", picture(picture)));
        return node;
    }

    private static ObjectNode picture(PaperFrame.Picture picture) {
        return JsonMapper.shared()
                .createObjectNode()
                .put("svg", picture.drawing().markup())
                .put("alternative", picture.alternative());
    }

    static PaperFrame read(JsonNode node) {
        return new PaperFrame(
                node.path("person").asString(""),
                node.has("born") ? Optional.of(LocalDate.parse(node.path("born").asString(""))) : Optional.empty(),
                node.path("clinic").asString(""),
                node.path("writer").asString(""),
                node.path("to").asString(""),
                node.path("mark").asBoolean(false),
                picture(node.path("ruler")),
                picture(node.path("course")),
                Optional.empty());
    }

    private static Optional<PaperFrame.Picture> picture(JsonNode node) {
        return node.isObject()
                ? Optional.of(new PaperFrame.Picture(
                        Svg.parse(node.path("svg").asString("")),
                        node.path("alternative").asString("")))
                : Optional.empty();
    }
}
