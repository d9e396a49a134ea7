package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.ConstructorException;
import org.snakeyaml.engine.v2.exceptions.DuplicateKeyException;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A mapping of a YAML file, with the file's name and the path of keys that leads to it for refusals. Only maps, lists and scalars are ever
 * built, whatever tags a file carries.
 */
public final class Yaml {
    private static final int MOST_CHARACTERS = 4_000_000;
    private static final int MOST_ALIASES = 20;

    private final String file;
    private final String path;
    private final Map<String, Object> map;

    private Yaml(String file, String path, Map<String, Object> map) {
        this.file = file;
        this.path = path;
        this.map = map;
    }

    /** @throws Refusal where the text is no YAML mapping */
    public static Yaml parse(String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setAllowDuplicateKeys(false)
                .setMaxAliasesForCollections(MOST_ALIASES)
                .setCodePointLimit(MOST_CHARACTERS)
                .build();
        Object root;
        try {
            root = new Load(settings).loadFromString(text);
        } catch (MarkedYamlEngineException wrong) {
            Message why = wrong.getProblemMark()
                    .map(mark -> Message.of("file.yaml.unreadable-at", problem(wrong), mark.getLine() + 1))
                    .orElseGet(() -> Message.of("file.yaml.unreadable", problem(wrong)));
            throw refusal(file, why, wrong);
        } catch (YamlEngineException wrong) {
            throw refusal(file, Message.of("file.yaml.unreadable", String.valueOf(wrong.getMessage())), wrong);
        } catch (StackOverflowError wrong) {
            throw refusal(file, Message.of("file.yaml.unreadable", Message.of("file.yaml.too-deep")), wrong);
        }
        return new Yaml(file, "", mapping(file, "", root));
    }

    private static Message problem(MarkedYamlEngineException wrong) {
        if (wrong instanceof DuplicateKeyException) {
            return Message.of("file.yaml.twice", wrong.getProblem().replace("found duplicate key ", ""));
        }
        return wrong instanceof ConstructorException
                ? Message.of("file.yaml.tag")
                : Message.of("file.yaml.out-of-place");
    }

    private static Refusal refusal(String file, Message why, Throwable cause) {
        return new Refusal(new Reason.Unreadable(why, Where.inFile(file)), cause);
    }

    private static Map<String, Object> mapping(String file, String path, Object value) {
        if (!(value instanceof Map<?, ?> map)) {
            throw refusal(
                    file,
                    path.isEmpty()
                            ? Message.of("file.yaml.no-mapping")
                            : Message.of("file.yaml.no-mapping-under", path),
                    null);
        }
        Map<String, Object> result = new LinkedHashMap<>();
        map.forEach((key, item) -> {
            if (result.put(String.valueOf(key), item) != null) {
                throw refusal(file, Message.of("file.yaml.twice", path + key), null);
            }
        });
        return result;
    }

    public List<String> keys() {
        return List.copyOf(map.keySet());
    }

    boolean has(String key) {
        return map.get(key) != null;
    }

    Optional<Object> raw(String key) {
        return Optional.ofNullable(map.get(key));
    }

    /** The mapping under a key; empty where it is not there. */
    public Optional<Yaml> map(String key) {
        return raw(key).map(value -> new Yaml(file, path + key + ": ", mapping(file, path + key, value)));
    }

    /** The list under a key; empty where it is not there. */
    public List<Object> list(String key) {
        Object value = map.get(key);
        if (value == null) {
            return List.of();
        }
        if (!(value instanceof List<?> list)) {
            throw refuse("file.no-list", key);
        }
        return new ArrayList<>(list);
    }

    /** The list of mappings under a key; empty where it is not there. */
    public List<Yaml> maps(String key) {
        List<Yaml> maps = new ArrayList<>();
        for (Object item : list(key)) {
            maps.add(new Yaml(file, path + key + ": ", mapping(file, path + key, item)));
        }
        return maps;
    }

    public Optional<String> text(String key) {
        return raw(key).map(value -> {
            if (value instanceof Map || value instanceof List) {
                throw refuse("file.one-value", key);
            }
            return value.toString();
        });
    }

    public String requiredText(String key, String example) {
        return text(key).orElseThrow(() -> refuse("file.missing", key, example));
    }

    Optional<Length> length(String key, Unit bareUnit) {
        return text(key).map(text -> inPlace(key, () -> Length.parse(text, bareUnit)));
    }

    /** A fraction written in per cent; 0 where it is not there. */
    double percent(String key) {
        String text = text(key).orElse("0 %").strip();
        if (!text.matches("[0-9]{1,3}(\\.[0-9]+)?\\s*%")) {
            throw refuse("file.not-per-cent", key, text);
        }
        return Double.parseDouble(text.substring(0, text.length() - 1).strip()) / 100;
    }

    boolean flag(String key) {
        return switch (text(key).orElse("false")) {
            case "true", "yes" -> true;
            case "false", "no" -> false;
            default -> throw refuse("file.true-or-false", key);
        };
    }

    /** @throws Refusal for a key that is not among these */
    public void knowing(String... known) {
        for (String key : keys()) {
            if (!List.of(known).contains(key)) {
                throw refuse("file.no-such-key", key, List.of(known));
            }
        }
    }

    /** Runs something that may refuse, naming the file and the key in the refusal. */
    <T> T inPlace(String key, Supplier<T> reading) {
        try {
            return reading.get();
        } catch (Refusal refusal) {
            throw refusal(
                    file, Message.of("file.under", path + key, refusal.reason().line()), refusal);
        }
    }

    /** Runs something that may refuse, naming the file in the refusal. */
    <T> T inFile(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (Refusal refusal) {
            throw refusal(file, at(refusal.reason().line()), refusal);
        }
    }

    Refusal refuse(String key, Object... arguments) {
        return refusal(file, at(Message.of(key, arguments)), null);
    }

    private Message at(Message why) {
        return path.isEmpty() ? why : Message.of("file.at-path", path, why);
    }
}
