package org.hearthrule.records;

import java.util.Locale;
import org.apache.commons.validator.routines.checkdigit.CheckDigit;
import org.apache.commons.validator.routines.checkdigit.CheckDigitException;
import org.apache.commons.validator.routines.checkdigit.ISBN10CheckDigit;
import org.apache.commons.validator.routines.checkdigit.ISBNCheckDigit;

/** An International Standard Book Number (ISO 2108): 13 digits, or 10 in books from before 2007, the last a check digit. */
public final class Isbn {

    private static final int OLD = 10;
    private static final int NEW = 13;

    private Isbn() { }

    /** @return the number without hyphens and spaces, its X a capital */
    public static String digits(String typed) {
        return typed.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }

    /** @return what is wrong with a number and what to do, or null when it is one */
    public static String complaint(String typed) {
        String digits = digits(typed);
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            boolean lastX = c == 'X' && i == OLD - 1 && digits.length() == OLD;
            if ((c < '0' || c > '9') && !lastX) {
                return "“" + c + "” does not belong in an ISBN. Type its digits as they stand on the back of the book.";
            }
        }
        if (digits.length() != OLD && digits.length() != NEW) {
            return "This has " + digits.length() + " digits; an ISBN has 13, or 10 in an older book.";
        }
        if (digits.length() == NEW && !digits.startsWith("978") && !digits.startsWith("979")) {
            return "An ISBN of 13 digits begins with 978 or 979.";
        }
        CheckDigit check = digits.length() == OLD ? ISBN10CheckDigit.ISBN10_CHECK_DIGIT : ISBNCheckDigit.ISBN_CHECK_DIGIT;
        return check.isValid(digits) ? null : "The last digit does not fit the others: it would be " + expected(digits)
                + ". One digit is mistyped.";
    }

    private static String expected(String digits) {
        String body = digits.substring(0, digits.length() - 1);
        try {
            return (digits.length() == OLD ? ISBN10CheckDigit.ISBN10_CHECK_DIGIT : org.apache.commons.validator.routines
                    .checkdigit.EAN13CheckDigit.EAN13_CHECK_DIGIT).calculate(body);
        } catch (CheckDigitException e) {
            throw new IllegalStateException(e);
        }
    }
}
