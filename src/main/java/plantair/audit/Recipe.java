package plantair.audit;

/** How to check an audit file with ordinary tools; the text that lies in it. */
final class Recipe {

    static final String TEXT = """
            PLANT AIR RECORDS: AUDIT FILE

            changes.txt  one line a change, in the order they were made:
                         DIGEST SPACE NUMBER TAB TIME TAB WHO TAB KIND TAB ID TAB NAME TAB BEFORE TAB AFTER TAB WHY TAB RECORD
                         DIGEST is the SHA-256 of: the DIGEST of the line before, a space, the rest of this line.
                         Before the first line stand 64 zeros. RECORD is the SHA-256 of the whole record after the change.
            records.txt  one line a record, as it is now:
                         DIGEST SPACE KIND TAB ID TAB COLUMN=VALUE TAB COLUMN=VALUE ...
                         DIGEST is the SHA-256 of what follows the second tab. It must be the RECORD of the newest line
                         of changes.txt with the same KIND and ID.
            In both files a line feed inside a text is \\n, a tab \\t, a carriage return \\r, a backslash \\\\. UTF-8.

            TO CHECK, with bash, sha256sum, awk and sort:

            (1) the chain
              before=$(printf '0%.0s' {1..64}); n=0
              while IFS=' ' read -r digest line; do
                n=$((n+1))
                found=$(printf '%s %s' "$before" "$line" | sha256sum | cut -d' ' -f1)
                [ "$found" = "$digest" ] || echo "changes.txt: line $n is not as it was written"
                before=$digest
              done < changes.txt; echo "$n lines, end $before"

            (2) the records
              while IFS=' ' read -r digest line; do
                text=$(printf '%s' "$line" | cut -f3-)
                found=$(printf '%s' "$text" | sha256sum | cut -d' ' -f1)
                [ "$found" = "$digest" ] || echo "records.txt: $(printf '%s' "$line" | cut -f1,2) is not as it was written"
              done < records.txt

            (3) both together
              awk -F'\\t' '{print $4" "$5" "$NF}' changes.txt | awk '{new[$1" "$2]=$3} END {for (k in new) print k" "new[k]}' | sort > newest
              awk -F'\\t' '{split($1,a," "); print a[2]" "$2" "a[1]}' records.txt | sort > found
              diff newest found && echo "each record is as its newest change left it"

            Compare the end of the chain with one that was noted earlier or elsewhere: the line with that digest must
            still be there. Without a digest kept outside, somebody who rules the database and knows this program could
            write the whole chain anew; the file cannot show that.
            """;

    private Recipe() {}
}
