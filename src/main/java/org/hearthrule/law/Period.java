package org.hearthrule.law;

/** A stretch of a school year that counts are taken over. */
public enum Period {
    YEAR, SEMESTER, TRIMESTER, QUARTER, MONTH, WEEK
}
