package org.hearthrule.tables;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Looks through the XML of a sheet before it is read: the reader does not say which rows are hidden, and takes a cell
 * at whatever column it claims to stand, even one that would need all memory there is.
 */
final class SheetCheck {

    private static final Pattern REFERENCE = Pattern.compile(
            "([A-Z]{1,2}|[A-W][A-Z]{2}|X[A-E][A-Z]|XF[A-D])[1-9][0-9]{0,6}");
    private static final Pattern ROW = Pattern.compile("[1-9][0-9]{0,6}");

    private final List<Integer> hidden = new ArrayList<>();
    private int cells;
    private boolean outside;

    private SheetCheck() { }

    /** Returns a reader of XML that knows no entities but those of XML itself. */
    static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    static SheetCheck of(InputStream xml, int mostCells) throws XMLStreamException {
        SheetCheck check = new SheetCheck();
        XMLStreamReader reader = factory().createXMLStreamReader(xml);
        int row = 0;
        while (reader.hasNext() && check.cells <= mostCells && !check.outside) {
            if (reader.next() == XMLStreamConstants.START_ELEMENT) {
                String name = reader.getLocalName();
                String at = name.equals("row") || name.equals("c") ? reader.getAttributeValue(null, "r") : null;
                if (name.equals("row")) {
                    check.outside = at != null && !ROW.matcher(at).matches();
                    row = at == null || check.outside ? row + 1 : Integer.parseInt(at);
                    String says = reader.getAttributeValue(null, "hidden");
                    if ("1".equals(says) || "true".equals(says)) {
                        check.hidden.add(row);
                    }
                } else if (name.equals("c")) {
                    check.cells++;
                    check.outside = at != null && !REFERENCE.matcher(at).matches();
                }
            }
        }
        reader.close();
        return check;
    }

    /** Returns how many cells were seen; no more than one above the limit. */
    int cells() {
        return cells;
    }

    /** Returns whether a cell or row claims a place that no sheet has. */
    boolean isOutside() {
        return outside;
    }

    /** Returns the numbers of the hidden rows. */
    List<Integer> hiddenRows() {
        return hidden;
    }
}
