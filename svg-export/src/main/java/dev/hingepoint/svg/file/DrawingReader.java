package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.pattern.Piece;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads a drawing: SVG 1.1 with the attributes of the pattern file. Elements without them are ignored and counted. Nothing outside
 * the file is ever loaded, and a document that declares entities is refused.
 */
final class DrawingReader {
    private static final int MOST_BYTES = 64 * 1024 * 1024;
    private static final int DEEPEST = 200;

    /** An XML declaration stands within the first bytes, and names an encoding. */
    private static final int DECLARATION = 200;

    private static final Pattern ENCODING =
            Pattern.compile("^(?:\u00EF\u00BB\u00BF)?<\\?xml[^>]*\\sencoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Set<String> NOT_DRAWN = Set.of(
            "defs", "symbol", "clipPath", "mask", "pattern", "marker", "metadata", "style", "script", "title", "desc");

    private final String file;
    private final List<Piece> pieces = new ArrayList<>();
    private final Deque<Motion> transforms = new ArrayDeque<>();
    private PieceReader piece;
    private int pieceDepth;
    private int ignored;

    private DrawingReader(String file) {
        this.file = file;
    }

    /**
     * What a drawing holds.
     *
     * @param ignored how many drawn elements carry none of the pattern's attributes
     */
    public record Drawing(List<Piece> pieces, int ignored) {}

    /**
     * @param file the name to give in a refusal
     * @throws Refusal saying where and why
     */
    public static Drawing read(String file, byte[] svg) {
        if (svg.length > MOST_BYTES) {
            throw unreadable(file, Message.of("file.drawing.too-large"));
        }
        String text = text(file, svg);
        if (text.contains("<!ENTITY")) {
            throw unreadable(file, Message.of("file.drawing.entities"));
        }
        try {
            return new DrawingReader(file).read(factory().createXMLStreamReader(new StringReader(text)));
        } catch (XMLStreamException wrong) {
            throw new Refusal(
                    new Reason.Unreadable(
                            Message.of(
                                    "file.drawing.no-xml",
                                    wrong.getLocation().getLineNumber(),
                                    wrong.getLocation().getColumnNumber()),
                            Where.inFile(file)),
                    wrong);
        } catch (Refusal refusal) {
            throw refusal.in(file);
        }
    }

    /**
     * The drawing's text (XML 1.0, section 4.3.3): in UTF-16 where it begins with that mark, else as its declaration says, else in UTF-8. Decoded here, since the
     * JDK's parser prints a line of its own about bytes that are no text.
     */
    private static String text(String file, byte[] svg) {
        String latin = new String(svg, 0, Math.min(svg.length, DECLARATION), StandardCharsets.ISO_8859_1);
        boolean isMarked = latin.startsWith("\u00FE\u00FF") || latin.startsWith("\u00FF\u00FE");
        Matcher declared = ENCODING.matcher(latin);
        String name = isMarked ? "UTF-16" : declared.find() ? declared.group(1) : "UTF-8";
        try {
            String text = Charset.forName(name)
                    .newDecoder()
                    .decode(ByteBuffer.wrap(svg))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException | IllegalArgumentException wrong) {
            throw new Refusal(
                    new Reason.Unreadable(
                            isMarked || !name.equals("UTF-8")
                                    ? Message.of("file.drawing.not-in-encoding", name)
                                    : Message.of("file.drawing.not-in-utf-8"),
                            Where.inFile(file)),
                    wrong);
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setXMLResolver((publicId, systemId, base, namespace) -> new ByteArrayInputStream(new byte[0]));
        return factory;
    }

    private Drawing read(XMLStreamReader xml) throws XMLStreamException {
        int depth = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                if (depth > DEEPEST) {
                    throw unreadable(file, Message.of("file.drawing.too-deep", DEEPEST));
                }
                if (depth == 1) {
                    root(new Element(xml));
                } else if (NOT_DRAWN.contains(xml.getLocalName())) {
                    skip(xml);
                    depth--;
                } else {
                    element(new Element(xml), depth);
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                if (piece != null && depth == pieceDepth) {
                    pieces.add(piece.piece());
                    piece = null;
                }
                transforms.pop();
                depth--;
            }
        }
        return new Drawing(List.copyOf(pieces), ignored);
    }

    private static void skip(XMLStreamReader xml) throws XMLStreamException {
        int open = 1;
        while (open > 0) {
            int event = xml.next();
            open += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    private void root(Element svg) {
        if (!svg.name().equals("svg") || !SVG.equals(svg.namespace())) {
            throw unreadable(file, Message.of("file.drawing.no-svg", SVG));
        }
        svg.attribute("data-form").filter(form -> !form.strip().equals("1")).ifPresent(form -> {
            throw unreadable(file, Message.of("file.drawing.unknown-form", form));
        });
        try {
            transforms.push(DrawingScale.of(
                    svg.attribute("width").orElse(null),
                    svg.attribute("height").orElse(null),
                    svg.attribute("viewBox").orElse(null),
                    svg.attribute("preserveAspectRatio").orElse(null)));
        } catch (IllegalArgumentException wrong) {
            throw new Refusal(
                    new Reason.Unreadable(
                            Illegible.why(wrong), Where.inFile(file).mark(svg.id())),
                    wrong);
        }
    }

    private void element(Element element, int depth) {
        Motion transform = transform(element);
        transforms.push(transform);
        boolean isPart = element.has("data-edge") || element.has("data-mark");
        if (element.has("data-piece")) {
            if (piece != null) {
                throw unreadable(file, Message.of("file.drawing.piece-in-piece", element.id()));
            }
            piece = new PieceReader(file, element);
            pieceDepth = depth;
        } else if (isPart && piece == null) {
            throw unreadable(file, Message.of("file.drawing.in-no-piece", element.id()));
        } else if (isPart) {
            piece.add(element, transform);
        } else if (element.name().equals("svg")) {
            throw unreadable(file, Message.of("file.drawing.svg-in-svg", element.id()));
        } else if (!element.name().equals("g")) {
            ignored++;
        }
    }

    private Motion transform(Element element) {
        Motion outer = transforms.peek();
        try {
            return element.attribute("transform")
                    .map(text -> Transforms.parse(text).then(outer))
                    .orElse(outer);
        } catch (IllegalArgumentException wrong) {
            throw new Refusal(
                    new Reason.Unreadable(
                            Illegible.why(wrong), Where.inFile(file).mark(element.id())),
                    wrong);
        }
    }

    static Refusal unreadable(String file, Message why) {
        return new Refusal(new Reason.Unreadable(why, Where.inFile(file)));
    }
}
