package org.hearthrule.law;

/**
 * Every kind of problem that reading a profile can report, with one sentence that explains it. The code in a message
 * is the constant with hyphens: {@code [UNKNOWN-SOURCE]}.
 */
public enum ProfileFault {
    // the file as a text
    NOT_UTF_8("The file is not saved as UTF-8."),
    CANNOT_READ("The file or folder could not be read."),
    TOO_BIG("The file is larger than any profile needs to be."),
    EMPTY_DOCUMENT("The file holds nothing but space and comments."),
    WRONG_YAML("The file is not YAML: a bracket, quote or indent is wrong."),
    TAB_INDENT("A line is indented with a tab; use spaces."),
    TOO_DEEP("Lists and mappings lie too deep within one another."),
    SEVERAL_DOCUMENTS("A file holds one profile; a line of three hyphens begins another document."),
    DIRECTIVE("Lines that begin with a percent sign are not used here."),
    ANCHOR("Anchors are not used here; write each value out."),
    ALIAS("Aliases are not used here; write each value out."),
    TAG("Tags are not used here."),
    MERGE_KEY("Merge keys are not used here; write each key out."),
    CONTROL_CHARACTER("A character that no text needs stands in the file."),
    HIDDEN_CHARACTER("A character that cannot be seen stands in the file; it may have come along with copied text."),
    // one value
    REPEATED_KEY("A key, and so an id, stands twice in one mapping."),
    KEY_NOT_TEXT("A key must be text."),
    UNKNOWN_KEY("The key is not one of this place; the keys of a profile are a closed set."),
    MISSING_KEY("A key that must be there is missing."),
    NOT_A_MAPPING("Keys with values belong here."),
    NOT_A_LIST("A list belongs here."),
    NOT_TEXT("Text belongs here."),
    EMPTY_LIST("A list that must name something is empty."),
    REPEATED_ITEM("An entry stands twice in one list."),
    BLANK("The text has no letters."),
    TOO_LONG("The text is longer than a reader will read at this place."),
    UNQUOTED("Text that looks like a number, a date, yes or no must stand in quotes."),
    WRONG_DATE("A date is written \"2026-09-01\" and must exist."),
    WRONG_MONTH_DAY("A day of the year is written \"09-01\" and must exist in every year."),
    WRONG_SCHOOL_YEAR("A school year is written \"2019-20\"."),
    NOT_AN_INTEGER("A whole number in plain digits belongs here."),
    NOT_A_NUMBER("A number in plain digits, with at most two behind the point, belongs here."),
    OUT_OF_RANGE("The number is too small or too large."),
    NOT_YES_OR_NO("Yes or no belongs here, without quotes."),
    UNKNOWN_VALUE("The word is not one of the few that are allowed here."),
    WRONG_NAME("An id or name is made of small letters, digits and single hyphens, beginning with a letter."),
    RESERVED_NAME("The name is used for ids of another kind."),
    WRONG_GRADES("Grades are K and 1 to 12, in quotes, such as \"K-6\" or \"3, 5, 8\"."),
    // the file as a whole
    UNKNOWN_FORMAT("The profile is written for another version of the format."),
    WRONG_CODE("The code of a jurisdiction is US and two capital letters, such as US-XX."),
    CODE_NOT_OF_FILE("The file's name and the code in it must agree: us-xx.yaml holds US-XX."),
    WRONG_FILE_NAME("A file of profiles is named by its code in small letters, such as us-xx.yaml."),
    // sources and citations
    NO_SOURCES("A profile needs at least one source."),
    UNCITED("A rule without a source is a rumour: every requirement and pathway cites one."),
    UNKNOWN_SOURCE("The citation names a source that is not in the list of sources."),
    SOURCE_NEVER_CITED("A source that no rule cites is left over, or a citation is missing. (A warning.)"),
    DIFFERS_FROM_NOTHING("A doubt about sources that differ names two or more."),
    BASIS_TOO_STRONG("A rule cannot have been read better than the source it cites."),
    // days in force
    BACKWARD_DAYS("A rule cannot end before it begins."),
    AGES_OVERLAP("Two entries of the compulsory ages are in force on one day."),
    NO_AGES("A profile needs at least one entry of compulsory ages."),
    // references
    UNKNOWN_REQUIREMENT("There is no requirement of that name in the pathway."),
    UNKNOWN_CHOICE("There is no choice of that name in the pathway."),
    UNKNOWN_OPTION("The choice does not offer that value."),
    CHOICE_NOT_DATES("The due dates must come from a choice of dates."),
    CHOICE_IS_DATES("A choice of dates has no values to compare with."),
    UNKNOWN_FACT("There is no fact of that name."),
    FACT_NEVER_USED("A fact that no rule turns on would be asked for nothing. (A warning.)"),
    UNKNOWN_LEVEL("There is no level of that name."),
    UNKNOWN_PATHWAY("There is no pathway of that name."),
    UNKNOWN_OPT_IN("There is no optional program of that name."),
    UNKNOWN_PAPER("No requirement of the pathway is shown by that paper."),
    UNKNOWN_METHOD("The requirement has no method of that name."),
    UNKNOWN_EVENT("There is no event of that name."),
    UNKNOWN_SUBJECT("The subject is not in the common vocabulary."),
    CYCLE("Requirements wait for one another in a circle."),
    GROUP_OF_ONE("A group of alternatives has only one member."),
    // pathways
    NO_PATHWAYS("A profile needs at least one pathway."),
    NO_USUAL_PATHWAY("One pathway of a profile must be marked as the usual one."),
    SEVERAL_USUAL_PATHWAYS("Only one pathway of a profile can be the usual one."),
    EXCLUDES_ITSELF("A pathway cannot exclude or be combined with itself."),
    EXCLUDED_AND_COMBINED("A pathway cannot be excluded and combined at once."),
    NO_OPTIONS("A choice offers two options or more, or dates."),
    OPTIONS_AND_DATES("A choice offers options or dates, not both."),
    // requirements
    KEY_OF_ANOTHER_KIND("The key belongs to requirements of another kind."),
    EVIDENCE_OF_ANOTHER_KIND("This evidence does not fit the kind of the requirement."),
    PAPER_AND_SHOWS("The paper is the evidence; what shows the requirement cannot be given as well."),
    SPAN_MISSING("The grades that the subjects are spread over are missing."),
    SPAN_UNUSED("A span of grades has no meaning with this interval."),
    QUESTION_AND_ASK("An open question names whom to ask, and whom to ask goes with a question."),
    // conditions
    NO_CONDITION("A mapping for a condition holds none."),
    SEVERAL_CONDITIONS("One mapping holds one condition; several are joined by any or all."),
    NO_AGE("A condition of age says from which age, below which age, or both."),
    AGE_ORDER("The ages are in the wrong order."),
    SEVERAL_ORDERS("One comparison at a time."),
    // due dates
    DAY_COMES_ONCE("A paper of each year cannot hang on a day that comes only once. (A warning.)"),
    NO_DUE_FORM("A mapping for a due date holds no form of one."),
    SEVERAL_DUE_FORMS("One mapping holds one form of a due date."),
    MISPLACED_KEY("The key belongs to another form."),
    UNREACHABLE_CASE("The case before it holds always, so this one is never reached."),
    NO_SPAN("A length of time is missing."),
    SEVERAL_SPANS("A length of time has one unit."),
    ROUNDING_MISSING("A length in months or years says what becomes of a day that the month lacks."),
    ROUNDING_UNUSED("Rounding has a meaning for months and years only."),
    STRICT_WITH_SPAN("Only with 0 days can the day itself be too late."),
    BACKWARD_WINDOW("The window closes before it opens within the school year."),
    BACKWARD_YEAR("The school year's first and last day do not make a year."),
    TIMES_ORDER("The most cannot be less than the least."),
    EVERY_WITHOUT_YEAR("Only school years can be skipped."),
    // evidence
    NO_EVIDENCE("A mapping for evidence holds none."),
    SEVERAL_EVIDENCE("One mapping holds one kind of evidence; several are joined by any-of or all-of."),
    NO_AMOUNT("An amount is missing."),
    SEVERAL_AMOUNTS("One amount at a time."),
    NO_PERIOD("Visits are counted in every so many days taught or in a stretch of the year."),
    SEVERAL_PERIODS("Visits are counted over one stretch of time."),
    LEVELS_OVERLAP("Two levels of one amount hold the same grade."),
    WRONG_MEASURE("The key counts with days only."),
    NO_COMPARISON("A threshold says above, at-least, below or at-most."),
    SEVERAL_COMPARISONS("A threshold has one comparison.");

    private final String meaning;

    ProfileFault(String meaning) {
        this.meaning = meaning;
    }

    /** @return what it means, one sentence for a maintainer of profiles */
    public String meaning() {
        return meaning;
    }

    /** @return the code as messages show it, for example {@code UNKNOWN-SOURCE} */
    public String code() {
        return name().replace('_', '-');
    }
}
