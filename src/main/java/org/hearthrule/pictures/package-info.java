/**
 * Photos and scans that lie beside the record book.
 *
 * <p>{@link org.hearthrule.pictures.Attachments} stores them under names of our own, finds them again and tidies up;
 * {@link org.hearthrule.pictures.Intake} takes many at once; {@link org.hearthrule.pictures.PictureFacts} tells what a
 * camera or a file's name says of the day, which is only ever offered; {@link org.hearthrule.pictures.Previews} makes
 * small upright pictures. The parent's own files are never changed. Nothing here knows the law of any state.
 */
package org.hearthrule.pictures;
