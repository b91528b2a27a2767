// Package save puts files on the disk, each whole or not at all. Nothing else of the command writes.
//
// What is written goes into a new file in the same folder, which is synced and then takes the name it is for. Whoever reads sees the old
// text or the new one; whatever happens meanwhile (the process is killed, the disk is full, the power fails) the old file is whole.
//
// A process that is killed leaves its new file behind: .hat.pdf.x7k2m3qa.part. Such a file is never read as anything, does not show up in
// most listings, and the next one who writes hat.pdf an hour later or more takes it away.
package save
