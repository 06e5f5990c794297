/** JSON Schemas (draft 2020-12) of the scenario and of every answer. */
package lanetide.cli.schema;
