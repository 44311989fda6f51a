package org.hearthrule.tables;

import java.util.Locale;

/** A form in which a book is taken out. */
public enum ExportFormat {
    /** One file of text for each list, all in one archive. */
    CSV("zip", "application/zip"),
    /** One spreadsheet with a sheet for each list. */
    XLSX("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
    /** The book's own files joined into one, with nothing lost. */
    JSON("json", "application/json");

    private final String ending;
    private final String mediaType;

    ExportFormat(String ending, String mediaType) {
        this.ending = ending;
        this.mediaType = mediaType;
    }

    /** @return the name on the command line, such as {@code csv} */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return what the name of its file ends with, such as {@code zip} */
    public String ending() {
        return ending;
    }

    /** @return its media type (RFC 6838) */
    public String mediaType() {
        return mediaType;
    }
}
