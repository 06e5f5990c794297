/** Where answers go: files, folders and standard output, guarded before a run; and how a command ends. */
package lanetide.cli.output;
