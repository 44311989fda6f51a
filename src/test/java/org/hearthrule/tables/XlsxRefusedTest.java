package org.hearthrule.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hearthrule.tables.Sheets.row;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.hearthrule.input.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that must not be read, or must be told from a spreadsheet, each in the way it would come. */
class XlsxRefusedTest {

    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final byte[] GOOD = Sheets.sheet("Log", row("Date", "Notes"), row("2026-09-01", "Kite"));

    @Test
    void oldSpreadsheetIsNamed() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (HSSFWorkbook old = new HSSFWorkbook()) {
            old.createSheet("Log").createRow(0).createCell(0).setCellValue("Date");
            old.write(bytes);
        }

        assertThat(refused(bytes.toByteArray(), "NOT-A-TABLE").found()).isEqualTo("an old spreadsheet (.xls)");
        assertThat(refused(bytes.toByteArray(), "NOT-A-TABLE").perhaps()).contains("save it as XLSX");
    }

    @Test
    void lockedSpreadsheetIsNamed() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("kite");
            try (OutputStream out = encryptor.getDataStream(files)) {
                out.write(GOOD);
            }
            files.writeFilesystem(bytes);
        }

        assertThat(refused(bytes.toByteArray(), "NOT-A-TABLE").found()).isEqualTo("a spreadsheet locked with a password");
    }

    @ParameterizedTest
    @CsvSource({"mimetype;content.xml, an OpenDocument file (.ods)", "Index/Document.iwa, a Numbers document (.numbers)",
        "[Content_Types].xml;xl/workbook.bin, a binary spreadsheet (.xlsb)",
        "[Content_Types].xml;word/document.xml, an office document without sheets", "log.csv;readings.csv, an archive (ZIP)"})
    void otherArchiveIsNamed(String names, String found) {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        for (String name : names.split(";")) {
            parts.put(name, "x".getBytes(StandardCharsets.UTF_8));
        }

        assertThat(refused(Sheets.archive(parts), "NOT-A-TABLE").found()).isEqualTo(found);
    }

    /** A declaration of a document type is the way to files elsewhere (XXE) and to a billion laughs. */
    @ParameterizedTest
    @ValueSource(strings = {SHEET, "xl/workbook.xml", "xl/sharedStrings.xml", "xl/styles.xml", "[Content_Types].xml",
        "xl/_rels/workbook.xml.rels"})
    void declarationOfADocumentTypeIsRefusedInEveryPart(String part) {
        byte[] bytes = withDocumentType(part, StandardCharsets.UTF_8);

        assertThat(refused(bytes, "UNSAFE-TABLE").found()).startsWith("a declaration of a document type");
    }

    @Test
    void declarationOfADocumentTypeIsFoundInUtf16() {
        assertThat(refused(withDocumentType(SHEET, StandardCharsets.UTF_16), "UNSAFE-TABLE").found())
                .startsWith("a declaration of a document type");
    }

    /** The refusal above could hide that an entity would be followed: its file's words must not turn up either. */
    @Test
    void fileElsewhereIsNeverRead(@TempDir Path folder) throws IOException {
        // given
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the words of another file");
        Map<String, byte[]> parts = Sheets.parts(GOOD);
        String text = new String(parts.get("xl/sharedStrings.xml"), StandardCharsets.UTF_8);
        parts.put("xl/sharedStrings.xml", (text.substring(0, text.indexOf("?>") + 2) + "<!DOCTYPE sst [<!ENTITY s SYSTEM \""
                + secret.toUri() + "\">]>" + text.substring(text.indexOf("?>") + 2).replace("Kite", "&s;"))
                .getBytes(StandardCharsets.UTF_8));

        // when
        TableFile file = read(Sheets.archive(parts));

        // then
        assertThat(file.table()).isEmpty();
        assertThat(file.problems().toString()).doesNotContain("the words of another file");
    }

    /** 300 MB of spaces in a file of 300 kB: unpacked without a limit they would fill the memory. */
    @Test
    void archiveThatUnpacksTooFarIsRefused() throws IOException {
        // given
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : Sheets.parts(GOOD).entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
            zip.putNextEntry(new ZipEntry("xl/media/image1.png"));
            byte[] spaces = " ".repeat(1_000_000).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 300; i++) {
                zip.write(spaces);
            }
        }

        // then
        assertThat(bytes.size()).isLessThan(1_000_000);
        assertThat(refused(bytes.toByteArray(), "UNSAFE-TABLE").found()).endsWith("bytes when unpacked");
    }

    @Test
    void fileThatIsTooLargeIsRefused() {
        assertThat(refused(new byte[TableFile.MOST_BYTES + 1], "TOO-BIG").found()).isEqualTo("20000001 bytes");
    }

    /** A cell that claims to stand in column ZZZZZZ made the reader lay out millions of empty cells before it. */
    @ParameterizedTest
    @ValueSource(strings = {"ZZZZZZ2", "XFE2", "A0", "A99999999", "2", "a2"})
    void cellWhereNoSheetHasOneIsRefused(String reference) {
        byte[] bytes = Sheets.changed(GOOD, SHEET, "r=\"B2\"", "r=\"" + reference + "\"");

        assertThat(refused(bytes, "TOO-BIG").found()).isEqualTo("a cell where no sheet has one");
    }

    @Test
    void cellInTheLastColumnIsRead() {
        byte[] bytes = Sheets.changed(GOOD, SHEET, "r=\"B2\"", "r=\"XFD2\"");

        assertThat(read(bytes).problems()).isEmpty();
        assertThat(read(bytes).table().orElseThrow().rows().get(0).cell(16_383).text()).isEqualTo("Kite");
    }

    @Test
    void moreCellsThanAFamilyHasAreRefused() {
        // given
        String cell = "<c r=\"A3\"><v>1</v></c>";
        String row = "<row r=\"3\">" + cell.repeat(1_000) + "</row>";

        // when
        byte[] bytes = Sheets.changed(GOOD, SHEET, "</sheetData>", row.repeat(1_001) + "</sheetData>");

        // then
        assertThat(refused(bytes, "TOO-BIG").found()).isEqualTo("more than 1000000 cells");
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/workbook.xml", "xl/sharedStrings.xml", SHEET, "[Content_Types].xml",
        "xl/_rels/workbook.xml.rels", "xl/styles.xml"})
    void partThatIsMissingIsRefusedAndNothingIsThrown(String part) {
        Map<String, byte[]> parts = Sheets.parts(GOOD);
        parts.remove(part);

        assertThat(read(Sheets.archive(parts)).table()).isEmpty();
        assertThat(read(Sheets.archive(parts)).problems()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/workbook.xml", "xl/sharedStrings.xml", SHEET, "xl/_rels/workbook.xml.rels", "xl/styles.xml"})
    void partThatIsCutShortIsRefusedAndNothingIsThrown(String part) {
        Map<String, byte[]> parts = Sheets.parts(GOOD);
        parts.put(part, Arrays.copyOf(parts.get(part), parts.get(part).length - 40));

        assertThat(refused(Sheets.archive(parts), "DAMAGED-TABLE").expected()).isEqualTo("a whole spreadsheet (XLSX)");
    }

    @Test
    void archiveThatIsCutShortIsRefused() {
        byte[] half = Arrays.copyOf(GOOD, GOOD.length / 2);

        assertThat(refused(half, "DAMAGED-TABLE").perhaps()).contains("save it again");
    }

    @Test
    void partsOfOneNameAreRefused() {
        Map<String, byte[]> parts = Sheets.parts(GOOD);
        parts.put("XL/Worksheets/Sheet1.xml", parts.get(SHEET));

        assertThat(refused(Sheets.archive(parts), "UNSAFE-TABLE").found()).isEqualTo("two parts of one name");
    }

    /** Macros come along as one more part; that it is there changes nothing. */
    @Test
    void macrosAreOnlyDataThatNobodyLooksAt() {
        // given
        Map<String, byte[]> parts = Sheets.parts(Sheets.changed(GOOD, "[Content_Types].xml",
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                "application/vnd.ms-excel.sheet.macroEnabled.main+xml"));
        parts.put("xl/vbaProject.bin", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0});

        // then
        assertThat(read(Sheets.archive(parts)).table().orElseThrow().rows().get(0).cell(1).text()).isEqualTo("Kite");
    }

    private static byte[] withDocumentType(String part, Charset charset) {
        Map<String, byte[]> parts = Sheets.parts(GOOD);
        String text = new String(parts.get(part), StandardCharsets.UTF_8).replace("UTF-8", charset.name());
        int end = text.indexOf("?>") + 2;
        assertThat(end).isGreaterThan(1);
        parts.put(part, (text.substring(0, end) + "<!DOCTYPE x [<!ENTITY a \"ha\">]>" + text.substring(end)).getBytes(charset));
        return Sheets.archive(parts);
    }

    private static TableFile read(byte[] bytes) {
        return TableFile.read("log.xlsx", bytes, TableFile.Choice.NONE);
    }

    private static Problem refused(byte[] bytes, String code) {
        TableFile file = read(bytes);
        assertThat(file.table()).isEmpty();
        assertThat(file.problems()).extracting(Problem::code).containsExactly(code);
        return file.problems().get(0);
    }
}
