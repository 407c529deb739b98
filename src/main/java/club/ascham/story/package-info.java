/** What happened to each thing, in plain sentences, appended and never changed. */
package club.ascham.story;
