/** The web page and its files: a small server of static files, and one document of settings. */
package io.pitchwatch.page;
