package org.hearthrule.suggest;

import java.util.BitSet;

/**
 * A subject that a line may be about, while all are being gathered.
 *
 * @param subject  its id
 * @param strength from 0, stronger first; cues of the vocabulary that a family neither confirmed nor struck give 1
 * @param places   indexes of the words that led to it
 * @param learned  whether only the family's habits led to it
 */
record Offer(String subject, double strength, BitSet places, boolean learned) { }
