/**
 * What strangers and broken programs send: every route and form of the packaged server meets it.
 */
package club.ascham.hostile;
