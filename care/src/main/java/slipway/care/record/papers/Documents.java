package slipway.care.record.papers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Documents of an episode; never changed. */
public interface Documents {
    /** Largest document in bytes. */
    int MAX_BYTES = 20_000_000;

    /**
     * Keeps a document.
     *
     * @throws IllegalArgumentException if it is empty or longer than {@value #MAX_BYTES} bytes
     */
    StoredDocument add(String kind, String mediaType, byte[] bytes, OptionalInt planVersion);

    /** Newest first. */
    List<StoredDocument> list();

    Optional<StoredDocument> find(String documentId);

    /** The bytes of a document; empty if there is none, or it was erased. */
    Optional<byte[]> bytes(String documentId);
}
