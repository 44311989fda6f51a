package org.hearthrule.tables;

/**
 * A sheet of a spreadsheet.
 *
 * @param name   as its tab shows it
 * @param hidden whether its tab is hidden; such a sheet is read only when somebody asks for it
 */
public record TableSheet(String name, boolean hidden) { }
