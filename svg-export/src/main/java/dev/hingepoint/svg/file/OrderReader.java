package dev.hingepoint.svg.file;

import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Reads an order: which pattern, which size, which alterations in which order. */
public final class OrderReader {
    private OrderReader() {}

    /**
     * What an order says.
     *
     * @param card the pattern's card
     * @param make how to make it up, once it is altered
     */
    public record ReadOrder(Path card, Order order, List<AlterationRequest> make) {
        public ReadOrder {
            make = List.copyOf(make);
        }
    }

    /** @throws dev.hingepoint.Refusal saying where and why */
    public static ReadOrder read(Path file) {
        String name = file.getFileName().toString();
        Yaml root = Yaml.parse(name, WholeFiles.text(file));
        root.knowing("form", "pattern", "size", "front", "body", "alterations", "make");
        Path card = WholeFiles.beside(file, root.requiredText("pattern", "larkfield.yaml"), root);
        Order order = new Order(
                root.requiredText("size", "\"40\""),
                root.text("front"),
                root.maps("alterations").stream().map(AlterationText::read).toList(),
                root.text("body")
                        .map(body -> BodyReader.read(WholeFiles.beside(file, body, root))
                                .lengths())
                        .orElse(Map.of()));
        List<AlterationRequest> make =
                root.maps("make").stream().map(AlterationText::read).toList();
        // an order that means to alter nothing says so
        if (!root.has("alterations") && make.isEmpty()) {
            throw root.refuse("file.order.no-alterations");
        }
        return new ReadOrder(card, order, make);
    }
}
