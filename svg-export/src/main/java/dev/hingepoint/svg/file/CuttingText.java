package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.pattern.Cutting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How often a piece is cut, as it is written: {@code 1 on fold main; 1 on fold interfacing}. */
public final class CuttingText {
    private static final Pattern ONE = Pattern.compile("([1-9][0-9]?)(?:\\s+(on fold|pairs?))?(?:\\s+(\\S.*))?");

    private CuttingText() {}

    /** @throws IllegalArgumentException where it cannot be read */
    public static List<Cutting> parse(String text) {
        List<Cutting> cuttings = new ArrayList<>();
        for (String part : text.split(";")) {
            Matcher one = ONE.matcher(part.strip().replaceAll("\\s+", " "));
            if (!one.matches()) {
                throw new Illegible(Message.of("file.cutting.unreadable", part.strip()));
            }
            Cutting.How how = one.group(2) == null
                    ? Cutting.How.SINGLE
                    : one.group(2).equals("on fold") ? Cutting.How.ON_FOLD : Cutting.How.PAIR;
            cuttings.add(new Cutting(Integer.parseInt(one.group(1)), how, Optional.ofNullable(one.group(3))));
        }
        return cuttings;
    }

    public static String write(List<Cutting> cuttings) {
        return String.join("; ", cuttings.stream().map(CuttingText::write).toList());
    }

    public static String write(Cutting cutting) {
        String how = switch (cutting.how()) {
            case SINGLE -> "";
            case ON_FOLD -> " on fold";
            case PAIR -> " pair";
        };
        return cutting.count() + how + cutting.cloth().map(cloth -> " " + cloth).orElse("");
    }
}
