package slipway.documents.pdf;

import java.util.Map;

/** A finished document and where its named parts came to stand. */
public final class Printed {
    /** The first and last page that a part touches, counted from 1. */
    public record Place(int firstPage, int lastPage) {
        /** Whether the part is cut by the end of a page. */
        public boolean split() {
            return firstPage != lastPage;
        }
    }

    private final byte[] pdf;
    private final int pageCount;
    private final Map<String, Place> places;
    private final String missingSigns;

    Printed(byte[] pdf, int pageCount, Map<String, Place> places, String missingSigns) {
        this.pdf = pdf;
        this.pageCount = pageCount;
        this.places = Map.copyOf(places);
        this.missingSigns = missingSigns;
    }

    /** The PDF file. */
    public byte[] pdf() {
        return pdf.clone();
    }

    public int pageCount() {
        return pageCount;
    }

    /**
     * Signs that the bundled typefaces cannot draw, each once; empty if there is none. They stand as U+FFFD on the page,
     * and whoever hands it out must be told: a name may be among them.
     */
    public String missingSigns() {
        return missingSigns;
    }

    /** Where each element with an {@code id} stands. */
    public Map<String, Place> places() {
        return places;
    }

    /**
     * Where the element with this {@code id} stands.
     *
     * @throws IllegalArgumentException if the page has no such element
     */
    public Place getPlace(String id) {
        Place place = places.get(id);
        if (place == null) {
            throw new IllegalArgumentException("no part \"%s\" on the page, only %s".formatted(id, places.keySet()));
        }
        return place;
    }
}
