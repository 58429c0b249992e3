package slipway.documents.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import slipway.exercises.exercise.Language;

/**
 * The texts of one package in one language, from {@code messages_<tag>.properties} (UTF-8) beside a class. Values may
 * hold {@code {0}}, {@code {1}} and so on; quotation marks are plain characters.
 */
public final class Words {
    private final String file;
    private final Language language;
    private final Properties texts;

    private Words(String file, Language language, Properties texts) {
        this.file = file;
        this.language = language;
        this.texts = texts;
    }

    /**
     * Reads the message file beside a class.
     *
     * @throws MissingResourceException if there is none in this language
     */
    public static Words beside(Class<?> home, Language language) {
        String file = "messages_" + language.code() + ".properties";
        try (InputStream stream = home.getResourceAsStream(file)) {
            if (stream == null) {
                throw new MissingResourceException("no " + file + " beside " + home.getName(), home.getName(), file);
            }
            var texts = new Properties();
            texts.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return new Words(file, language, texts);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file + " beside " + home.getName(), e);
        }
    }

    public Language language() {
        return language;
    }

    /**
     * Whether a speaker of the language has reviewed these texts, as the file itself says under {@code reviewed}. If
     * not, whoever hands them to a person must be told.
     */
    public boolean reviewed() {
        return "yes".equals(get("reviewed"));
    }

    /** All keys, sorted. */
    public Set<String> keys() {
        return new TreeSet<>(texts.stringPropertyNames());
    }

    /**
     * The text of a key with its places left open, for whoever fills them elsewhere.
     *
     * @throws MissingResourceException if the key has no text
     */
    public String open(String key) {
        String text = texts.getProperty(key);
        if (text == null) {
            throw new MissingResourceException("no text for " + key + " in " + file, file, key);
        }
        return text;
    }

    /**
     * The text of a key with its places filled in.
     *
     * @throws MissingResourceException if the key has no text
     */
    public String get(String key, Object... values) {
        String text = open(key);
        // One pass from left to right, so that a value that itself reads {1} stays as it is.
        var filled = new StringBuilder();
        int from = 0;
        for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
            int close = text.indexOf('}', open);
            int place = Integer.parseInt(text.substring(open + 1, close));
            filled.append(text, from, open).append(values[place]);
            from = close + 1;
        }
        return filled.append(text.substring(from)).toString();
    }

    /** The text for a count: key {@code .one} for 1, key {@code .other} otherwise; the count fills {@code {0}}. */
    public String counted(String key, int count) {
        return get(key + (count == 1 ? ".one" : ".other"), count);
    }

    /** The texts of {@code key.1}, {@code key.2} and so on, each with the same values filled in. */
    public List<String> list(String key, Object... values) {
        var items = new ArrayList<String>();
        for (int i = 1; texts.containsKey(key + "." + i); i++) {
            items.add(get(key + "." + i, values));
        }
        return List.copyOf(items);
    }
}
