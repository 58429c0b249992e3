package slipway.pictures.svg;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Reads a picture back, for tests. */
public final class SvgReader {
    private static final Pattern TOKEN = Pattern.compile("[MLlcz]|-?\\d+(?:\\.\\d+)?");
    private final Document document;

    private SvgReader(Document document) {
        this.document = document;
    }

    /** Fails on anything that is not well-formed XML. */
    public static SvgReader of(String svg) {
        try {
            return new SvgReader(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg))));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    public List<Element> all(String name) {
        var found = document.getElementsByTagName(name);
        var all = new ArrayList<Element>();
        for (int i = 0; i < found.getLength(); i++) {
            all.add((Element) found.item(i));
        }
        return all;
    }

    /** The text of the first element of this name. */
    public String text(String element) {
        return document.getElementsByTagName(element).item(0).getTextContent();
    }

    public String rootAttribute(String name) {
        return document.getDocumentElement().getAttribute(name);
    }

    /** All end points of the paths that lie outside the picture. */
    public List<String> pointsOutsideViewBox() {
        String[] box = rootAttribute("viewBox").split(" ", -1);
        double left = Double.parseDouble(box[0]);
        double top = Double.parseDouble(box[1]);
        double right = left + Double.parseDouble(box[2]);
        double bottom = top + Double.parseDouble(box[3]);
        var outside = new ArrayList<String>();
        var paths = document.getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            for (double[] p : points(((Element) paths.item(i)).getAttribute("d"))) {
                if (!(p[0] >= left && p[0] <= right && p[1] >= top && p[1] <= bottom)) {
                    outside.add(p[0] + " " + p[1]);
                }
            }
        }
        return outside;
    }

    /** End points of the segments of path data as {@link PathData} writes it: M, then relative l or c. */
    private static List<double[]> points(String data) {
        var points = new ArrayList<double[]>();
        var numbers = new ArrayList<Double>();
        double[] at = {0, 0};
        char command = 'M';
        var tokens = TOKEN.matcher(data);
        while (tokens.find()) {
            String token = tokens.group();
            if (Character.isLetter(token.charAt(0))) {
                command = token.charAt(0);
                continue;
            }
            numbers.add(Double.valueOf(token));
            if (numbers.size() == (command == 'c' ? 6 : 2)) {
                double x = numbers.get(numbers.size() - 2);
                double y = numbers.get(numbers.size() - 1);
                boolean absolute = Character.isUpperCase(command);
                at = new double[] {absolute ? x : at[0] + x, absolute ? y : at[1] + y};
                points.add(at);
                numbers.clear();
            }
        }
        return points;
    }
}
