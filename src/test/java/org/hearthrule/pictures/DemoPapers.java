package org.hearthrule.pictures;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sets the invented papers of the demo family, the same each time: {@code java DemoPapers.java
 * test-fixtures/books/tennick-landing/papers}. Each is one page that says what stands in for which paper, and of itself
 * that it is invented: nobody can take one for a form.
 */
final class DemoPapers {

    private static final String INVENTED = "An invented paper of an invented family, to try things out with.";

    private DemoPapers() { }

    public static void main(String[] folder) throws IOException {
        Path to = Files.createDirectories(Path.of(folder[0]));
        for (Map.Entry<String, byte[]> one : all().entrySet()) {
            Files.write(to.resolve(one.getKey()), one.getValue());
        }
    }

    /** Returns each paper by the name of its file. */
    static Map<String, byte[]> all() {
        Map<String, byte[]> papers = new TreeMap<>();
        papers.put("affidavit-2024.pdf", page("Affidavit for the school year 2024-25",
                "The Kestler family, Tennick Landing",
                "Copy of what was handed in on August 12, 2024, stamped at the counter."));
        papers.put("affidavit-2025.pdf", page("Affidavit for the school year 2025-26",
                "The Kestler family, Tennick Landing",
                "Copy of what was sent by certified mail on July 24, 2025."));
        papers.put("certificate-2025.pdf", page("Evaluator's certificate for the school year 2024-25",
                "Bettina Osgarth, evaluator",
                "Copy of what was sent by certified mail on June 24, 2025."));
        papers.put("council-minutes-2026-02.pdf", page("Minutes of the hearing on the landing",
                "Council of Tennick Landing",
                "February 24, 2026. Marit and Ansel Kestler spoke for three minutes each."));
        papers.put("evaluator-letter-2025.pdf", page("On the work of Wren, Ansel and Marit Kestler",
                "Bettina Osgarth, evaluator",
                "June 17, 2025. The portfolios were looked through and each child was talked with."));
        papers.put("first-aid-card.pdf", page("First-aid course card",
                "Marit Kestler", "Course of February 18, 2026."));
        papers.put("objectives-2024.pdf", page("Objectives by subject for 2024-25",
                "Wren, Ansel and Marit Kestler", "August 10, 2024."));
        papers.put("objectives-2025.pdf", page("Objectives by subject for 2025-26",
                "Wren, Ansel and Marit Kestler", "July 22, 2025."));
        papers.put("test-report-ansel-2025.pdf", page("Report of the test of April 22, 2025",
                "Ansel Kestler",
                "Percentiles: reading 71, language 58, mathematics 82."));
        papers.put("test-report-marit-2026.pdf", page("Report of the test of April 14, 2026",
                "Marit Kestler",
                "Percentiles: reading 88, language 74, mathematics 69."));
        return papers;
    }

    /** Returns a PDF of one page (ISO 32000-1): a title and lines below it, in a font that every reader has. */
    private static byte[] page(String title, String... lines) {
        StringBuilder text = new StringBuilder("BT /F1 20 Tf 72 700 Td (" + title + ") Tj /F1 12 Tf");
        for (String line : lines) {
            text.append(" 0 -30 Td (").append(line).append(") Tj");
        }
        text.append(" 0 -560 Td (").append(INVENTED).append(") Tj ET");
        List<String> objects = List.of("<< /Type /Catalog /Pages 2 0 R /Lang (en-US) >>",
                "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
                "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Contents 5 0 R"
                        + " /Resources << /Font << /F1 4 0 R >> >> >>",
                "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>",
                "<< /Length " + text.length() + " >>\nstream\n" + text + "\nendstream", "<< /Title (" + title + ") >>");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<Integer> starts = new ArrayList<>();
        write(out, "%PDF-1.4\n");
        for (String object : objects) {
            starts.add(out.size());
            write(out, starts.size() + " 0 obj\n" + object + "\nendobj\n");
        }
        int table = out.size();
        write(out, "xref\n0 " + (objects.size() + 1) + "\n0000000000 65535 f \n");
        starts.forEach(start -> write(out, String.format("%010d 00000 n \n", start)));
        write(out, "trailer\n<< /Size " + (objects.size() + 1) + " /Root 1 0 R /Info 6 0 R >>\nstartxref\n" + table
                + "\n%%EOF\n");
        return out.toByteArray();
    }

    private static void write(ByteArrayOutputStream out, String text) {
        out.writeBytes(text.getBytes(StandardCharsets.US_ASCII));
    }
}
