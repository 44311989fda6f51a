package org.hearthrule.records;

/**
 * How much a copy may hold. What is written keeps to the same limits as what is read, so that every copy can be put back.
 *
 * @param files how many
 * @param file  bytes of one
 * @param all   bytes of all together
 */
record BookArchiveLimits(int files, long file, long all) {

    /** Thirteen years of four children with a photo a day are some 20,000 files. */
    static final BookArchiveLimits DEFAULT = new BookArchiveLimits(50_000, 2_000_000_000, 100_000_000_000L);
}
