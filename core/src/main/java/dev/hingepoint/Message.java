package dev.hingepoint;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence of the library as a key and what goes into it, so that an app can say it in its own language and units. The English words of every
 * key stand in one bundle, {@code dev/hingepoint/messages.properties}: {@code {0}} is the first argument, {@code {1}} the second. A key that no
 * bundle has is its own words.
 *
 * @param arguments in order: text, numbers, each {@link Quantity} with its unit, messages, and lists of these; anything else is kept as its text
 */
public record Message(String key, List<Object> arguments) {
    private static final ResourceBundle ENGLISH = ResourceBundle.getBundle("dev.hingepoint.messages", Locale.ROOT);
    private static final Pattern PLACE = Pattern.compile("\\{([0-9])}");

    public Message {
        Objects.requireNonNull(key);
        arguments = arguments.stream().map(Message::kept).toList();
    }

    public static Message of(String key, Object... arguments) {
        return new Message(key, List.of(arguments));
    }

    /** Several parts as one, each two of them joined by the words of a key, such as "{0} or {1}". */
    public static Message joined(String key, Collection<?> parts) {
        return parts.stream()
                .map(part -> part instanceof Message message ? message : of("list.one", part))
                .reduce((some, next) -> of(key, some, next))
                .orElseGet(() -> of("list.one", ""));
    }

    /** In English. */
    public String text() {
        return text(ENGLISH);
    }

    /** In the words of an app's own bundle, or in English where it has none for a key. */
    public String text(ResourceBundle words) {
        return PLACE.matcher(words(key, words)).replaceAll(place -> {
            int index = Integer.parseInt(place.group(1));
            String told = index < arguments.size() ? told(arguments.get(index), words) : place.group();
            return Matcher.quoteReplacement(told);
        });
    }

    private static String words(String key, ResourceBundle words) {
        ResourceBundle known = words.containsKey(key) ? words : ENGLISH;
        return known.containsKey(key) ? known.getString(key) : key;
    }

    private static String told(Object argument, ResourceBundle words) {
        if (argument instanceof Message message) {
            return message.text(words);
        }
        if (argument instanceof Quantity quantity) {
            return quantity.message().text(words);
        }
        if (argument instanceof Number number) {
            return number.toString().replace(".", words("decimal-mark", words));
        }
        if (argument instanceof List<?> list) {
            return list.stream()
                    .map(part -> told(part, words))
                    .reduce((some, next) -> of("list", some, next).text(words))
                    .orElse("");
        }
        return argument.toString();
    }

    private static Object kept(Object argument) {
        if (argument instanceof Collection<?> several) {
            return several.stream().map(Message::kept).toList();
        }
        boolean isTyped = argument instanceof Message || argument instanceof Quantity || argument instanceof Number;
        return isTyped ? argument : argument.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}
