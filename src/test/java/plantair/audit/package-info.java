/** Tests of the check of the records. */
package plantair.audit;
