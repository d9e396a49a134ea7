package dev.hingepoint.samples;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A table of text: names down, sizes across, every column as wide as it needs. */
final class Table {
    private final List<List<String>> rows = new ArrayList<>();

    Table(Collection<String> columns) {
        row("", List.copyOf(columns));
    }

    void row(String name, List<String> cells) {
        List<String> row = new ArrayList<>();
        row.add(name);
        row.addAll(cells);
        rows.add(row);
    }

    void print(PrintWriter out) {
        int[] widths = IntStream.range(0, rows.get(0).size())
                .map(column -> rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .toArray();
        for (List<String> row : rows) {
            out.println(IntStream.range(0, widths.length)
                    .mapToObj(i -> {
                        String gap = " ".repeat(widths[i] - row.get(i).length());
                        return i == 0 ? row.get(i) + gap : gap + row.get(i);
                    })
                    .collect(Collectors.joining("  "))
                    .stripTrailing());
        }
    }
}
