package org.hearthrule.tables;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/**
 * Reads one sheet of a spreadsheet (XLSX). Formulas are not computed: what they came to when the file was saved is
 * taken. Macros are data that nobody looks at.
 */
final class XlsxReading {

    private static final String SAVE_AGAIN = "open it in the spreadsheet program and save it again as XLSX";
    private static final int LISTED = 8;

    private final String file;
    private final byte[] content;
    private final Place top;
    private final Problems problems;
    private final List<TableSheet> sheets = new ArrayList<>();

    XlsxReading(String file, byte[] content, Problems problems) {
        this.file = file;
        this.content = content;
        this.top = new Place(file, 1, 1);
        this.problems = problems;
    }

    /** Returns the sheets that were found, in the order of the file. */
    List<TableSheet> sheets() {
        return List.copyOf(sheets);
    }

    /**
     * Reads a sheet.
     *
     * @param wanted name of the sheet; null: the first one that is not hidden and has headers
     * @return the table, or empty after recording why there is none
     */
    Optional<Table> read(String wanted) {
        try (XlsxParts parts = new XlsxParts(content)) {
            String other = OtherKind.ofArchive(parts.names());
            if (other != null) {
                TableFile.refuse(top, other, problems);
                return Optional.empty();
            }
            String objection = parts.objection(TableFile.MOST_UNPACKED);
            if (objection != null) {
                problems.error(top, "UNSAFE-TABLE", objection, "an ordinary spreadsheet (XLSX)", SAVE_AGAIN);
                return Optional.empty();
            }
            return read(parts, wanted);
        } catch (IOException | XMLStreamException | RuntimeException e) {
            // a damaged file makes its readers fail in every way there is
            problems.error(top, "DAMAGED-TABLE", "a damaged spreadsheet, or an archive that is none",
                    "a whole spreadsheet (XLSX)", SAVE_AGAIN);
            return Optional.empty();
        }
    }

    private Optional<Table> read(XlsxParts parts, String wanted) throws IOException, XMLStreamException {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(content),
                new ReadingOptions(true, true))) {
            List<Sheet> found = book.getSheets().toList();
            found.forEach(sheet -> sheets.add(new TableSheet(sheet.getName(),
                    sheet.getVisibility() != SheetVisibility.VISIBLE)));
            Map<String, String> partOf = sheetParts(parts);
            if (wanted != null) {
                Optional<Sheet> sheet = named(found, wanted);
                return sheet.isEmpty() ? Optional.empty() : table(sheet.get(), parts, partOf, problems);
            }
            return first(found, parts, partOf);
        }
    }

    private Optional<Sheet> named(List<Sheet> found, String wanted) {
        Optional<Sheet> sheet = found.stream().filter(one -> one.getName().equals(wanted)).findFirst()
                .or(() -> found.stream().filter(one -> one.getName().equalsIgnoreCase(wanted.strip())).findFirst());
        if (sheet.isEmpty()) {
            List<String> names = sheets.stream().map(TableSheet::name).toList();
            problems.error(top, "UNKNOWN-SHEET", "no sheet " + Phrases.quoted(wanted), Phrases.or(names, "sheets"),
                    Nearest.of(wanted, names).map(near -> "you meant " + Phrases.quoted(near)).orElse(null));
        }
        return sheet;
    }

    /** Returns the first visible sheet with headers; failing that, what is wrong with the first visible one is told. */
    private Optional<Table> first(List<Sheet> found, XlsxParts parts, Map<String, String> partOf)
            throws IOException, XMLStreamException {
        Problems ofFirst = null;
        for (Sheet sheet : found) {
            if (sheet.getVisibility() == SheetVisibility.VISIBLE) {
                Problems own = new Problems();
                Optional<Table> table = table(sheet, parts, partOf, own);
                boolean headed = table.isPresent()
                        && table.get().headers().stream().filter(header -> !header.isEmpty()).count() > 1;
                if (headed || own.hasErrors() && table.isEmpty() && own.all().stream()
                        .noneMatch(problem -> problem.code().equals("EMPTY-TABLE"))) {
                    problems.addAll(own.all());
                    return table;
                }
                ofFirst = ofFirst == null ? own : ofFirst;
            }
        }
        if (ofFirst == null || !ofFirst.hasErrors()) {
            problems.error(top, "EMPTY-TABLE", "no sheet with headers", "a row of headers and rows below it", null);
        } else {
            problems.addAll(ofFirst.all());
        }
        return Optional.empty();
    }

    private Optional<Table> table(Sheet sheet, XlsxParts parts, Map<String, String> partOf, Problems own)
            throws IOException, XMLStreamException {
        SheetCheck check;
        try (InputStream xml = parts.open(partOf.get(sheet.getId()))) {
            check = SheetCheck.of(xml, TableFile.MOST_CELLS);
        }
        Place corner = new Place(file, 1, 1, sheet.getName());
        if (check.isOutside() || check.cells() > TableFile.MOST_CELLS) {
            own.error(corner, "TOO-BIG", check.isOutside() ? "a cell where no sheet has one"
                    : "more than " + TableFile.MOST_CELLS + " cells", "at most " + TableFile.MOST_CELLS
                    + " cells in a sheet", check.isOutside() ? SAVE_AGAIN : "split the table");
            return Optional.empty();
        }
        Optional<Table> table = Table.of(rows(sheet), new Layout.Sheet(sheet.getName(), check.hiddenRows().size()),
                corner, own);
        table.ifPresent(read -> tellHidden(check.hiddenRows(), sheet.getName(), own));
        return table;
    }

    private List<Table.Row> rows(Sheet sheet) throws IOException {
        XlsxCells cells = new XlsxCells(file, sheet.getName());
        List<Table.Row> rows = new ArrayList<>();
        try (Stream<Row> stream = sheet.openStream()) {
            stream.map(cells::row).filter(row -> !row.isBlank()).forEach(rows::add);
        }
        return rows;
    }

    private void tellHidden(List<Integer> hidden, String sheet, Problems own) {
        if (hidden.isEmpty()) {
            return;
        }
        StringBuilder rows = new StringBuilder();
        for (int row : hidden.subList(0, Math.min(LISTED, hidden.size()))) {
            rows.append(rows.length() == 0 ? "" : ", ").append(row);
        }
        own.warning(new Place(file, hidden.get(0), 1, sheet), "HIDDEN-ROWS",
                (hidden.size() == 1 ? "a hidden row, " : hidden.size() + " hidden rows, ") + rows
                        + (hidden.size() > LISTED ? " …" : ""),
                "rows that can be seen", "a filter hides them; they are read like the others");
    }

    /** Returns the part of each sheet by its id, since the reader keeps that to itself. */
    private static Map<String, String> sheetParts(XlsxParts parts) throws IOException, XMLStreamException {
        Map<String, String> partOf = new HashMap<>();
        for (String name : parts.names()) {
            if (name.endsWith(".rels")) {
                try (InputStream xml = parts.open(name)) {
                    readRelations(xml, name, parts.names(), partOf);
                }
            }
        }
        return partOf;
    }

    private static void readRelations(InputStream xml, String name, List<String> names, Map<String, String> partOf)
            throws XMLStreamException {
        XMLStreamReader reader = SheetCheck.factory().createXMLStreamReader(xml);
        String folder = name.substring(0, Math.max(0, name.lastIndexOf("_rels/")));
        while (reader.hasNext()) {
            if (reader.next() == XMLStreamConstants.START_ELEMENT
                    && String.valueOf(reader.getAttributeValue(null, "Type")).endsWith("/worksheet")) {
                String target = reader.getAttributeValue(null, "Target");
                String part = target.startsWith("/") ? target.substring(1) : folder + target;
                names.stream().filter(part::equalsIgnoreCase).findFirst()
                        .ifPresent(found -> partOf.put(reader.getAttributeValue(null, "Id"), found));
            }
        }
        reader.close();
    }
}
