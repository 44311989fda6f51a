package org.hearthrule.checklist;
class Show { public static void main(String[] a) {
 Checklist c = Checklist.of(SampleJudgement.judgement(), SampleJudgement.book());
 var w = org.hearthrule.terms.Wording.english();
 System.out.println(a[0].equals("ics") ? new CalendarWriter(w,false).write(c,"k",CalendarFile.NONE) : a[0].equals("json") ? new JsonWriter(w).write(c) : new TextWriter(w, new Style(80, a.length==1 , false)).write(c, true)); } }
