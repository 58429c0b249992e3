package slipway.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;

/** What a program sends: read no further than allowed, and only in a form that is named. */
final class Bodies {
    static final MediaType YAML = MediaType.parseMediaType("application/yaml");

    private Bodies() {}

    /**
     * The body of a request.
     *
     * @param most bytes
     * @param forms media types that are taken
     * @throws ProblemException 413 or 415
     */
    static byte[] read(HttpServletRequest request, int most, List<MediaType> forms) {
        check(request, forms);
        if (request.getContentLengthLong() > most) {
            throw tooLong(most);
        }
        try {
            byte[] bytes = request.getInputStream().readNBytes(most + 1);
            if (bytes.length > most) {
                throw tooLong(most);
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void check(HttpServletRequest request, List<MediaType> forms) {
        if (Optional.ofNullable(request.getHeader(HttpHeaders.CONTENT_ENCODING))
                .filter(coding -> !coding.toLowerCase(Locale.ROOT).equals("identity"))
                .isPresent()) {
            throw new ProblemException(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "send the body without a content encoding");
        }
        Optional<MediaType> sent = parsed(request.getContentType());
        boolean utf8 = sent.map(MediaType::getCharset)
                .filter(charset -> !charset.equals(java.nio.charset.StandardCharsets.UTF_8))
                .isEmpty();
        if (!utf8
                || sent.filter(type -> forms.stream().anyMatch(form -> form.equalsTypeAndSubtype(type)))
                        .isEmpty()) {
            throw new ProblemException(
                    HttpStatus.UNSUPPORTED_MEDIA_TYPE,
                    "send UTF-8 with Content-Type %s"
                            .formatted(String.join(
                                    " or ",
                                    forms.stream().map(MediaType::toString).toList())));
        }
    }

    private static Optional<MediaType> parsed(@Nullable String type) {
        try {
            return Optional.ofNullable(type).map(MediaType::parseMediaType);
        } catch (InvalidMediaTypeException e) {
            return Optional.empty();
        }
    }

    private static ProblemException tooLong(int most) {
        return new ProblemException(HttpStatus.CONTENT_TOO_LARGE, "the body may have at most %d bytes".formatted(most));
    }

    /**
     * The form in which the program wants the answer.
     *
     * @param forms that there are; the first is given to whoever does not mind
     * @throws ProblemException 406
     */
    static MediaType wanted(HttpServletRequest request, List<MediaType> forms) {
        String accept =
                Optional.ofNullable(request.getHeader(HttpHeaders.ACCEPT)).orElse("*/*");
        try {
            return MediaType.parseMediaTypes(accept).stream()
                    .sorted(java.util.Comparator.comparingDouble(MediaType::getQualityValue)
                            .reversed())
                    .flatMap(asked -> forms.stream().filter(asked::includes).limit(1))
                    .findFirst()
                    .orElseThrow(() -> notAcceptable(forms));
        } catch (InvalidMediaTypeException e) {
            throw notAcceptable(forms);
        }
    }

    private static ProblemException notAcceptable(List<MediaType> forms) {
        return new ProblemException(HttpStatus.NOT_ACCEPTABLE, "there is " + forms);
    }
}
