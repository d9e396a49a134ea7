package dev.hingepoint.svg.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;

/** One element of a drawing: its name and attributes, and what to call it. */
record Element(String name, String namespace, Map<String, String> attributes, String id) {
    Element(XMLStreamReader xml) {
        this(xml.getLocalName(), xml.getNamespaceURI(), attributes(xml), id(xml));
    }

    private static Map<String, String> attributes(XMLStreamReader xml) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeNamespace(i) == null
                    || xml.getAttributeNamespace(i).isEmpty()) {
                attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
        }
        return attributes;
    }

    /** The id, or where it stands in the file. */
    private static String id(XMLStreamReader xml) {
        String id = xml.getAttributeValue(null, "id");
        return id == null || id.isBlank()
                ? xml.getLocalName() + " at line " + xml.getLocation().getLineNumber()
                : id.strip();
    }

    boolean has(String attribute) {
        return attributes.containsKey(attribute);
    }

    Optional<String> attribute(String attribute) {
        return Optional.ofNullable(attributes.get(attribute));
    }

    /** The words of an attribute, white space folded; empty where it says nothing. */
    Optional<String> words(String attribute) {
        return attribute(attribute)
                .map(text -> text.strip().replaceAll("\\s+", " "))
                .filter(text -> !text.isEmpty());
    }
}
