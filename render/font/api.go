// Package font holds the embedded faces and measures text in them. It knows nothing of PDF.
package font
