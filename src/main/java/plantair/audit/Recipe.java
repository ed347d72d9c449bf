package plantair.audit;

/** How to check an audit file with ordinary tools; the text that lies in it. */
final class Recipe {

    /** The commands are the lines that begin with two blanks below "TO CHECK". */
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
            files/       photos and papers, each under the SHA-256 of its bytes, which is the sha256 of its record.
            In both texts a line feed inside a text is \\n, a tab \\t, a carriage return \\r, a zero byte \\0 and a backslash
            \\\\; \\N stands for no text at all. Both are UTF-8 and each line ends with a line feed.

            TO CHECK, with bash, sha256sum, cut, awk, sort, tr, grep and diff, in the unpacked folder:

              export LC_ALL=C

            (1) the chain

              before=$(printf '0%.0s' {1..64}); n=0
              while IFS= read -r line || [ -n "$line" ]; do
                n=$((n+1)); digest=${line%% *}; rest=${line#* }
                found=$(printf '%s %s' "$before" "$rest" | sha256sum | cut -d' ' -f1)
                [ "$found" = "$digest" ] || echo "FAULT changes.txt: line $n is not as it was written"
                before=$digest
              done < changes.txt; echo "$n lines, end $before"

            (2) the records

              n=0
              while IFS= read -r line || [ -n "$line" ]; do
                n=$((n+1)); digest=${line%% *}; text=${line#*$'\\t'}; text=${text#*$'\\t'}
                found=$(printf '%s' "$text" | sha256sum | cut -d' ' -f1)
                [ "$found" = "$digest" ] || echo "FAULT records.txt: line $n is not as it was written"
              done < records.txt; echo "$n records"

            (3) both together

              awk -F'\\t' '{print $4" "$5" "$NF}' changes.txt | awk '{new[$1" "$2]=$3} END {for (k in new) print k" "new[k]}' | sort > newest
              awk -F'\\t' '{split($1,a," "); print a[2]" "$2" "a[1]}' records.txt | sort > found
              diff newest found && echo "each record is as its newest change left it" || echo "FAULT records and changes differ"

            (4) the photos and papers

              n=0
              for file in files/*; do
                [ -e "$file" ] || continue
                n=$((n+1)); name=${file#files/}
                [ "$(sha256sum < "$file" | cut -d' ' -f1)" = "${name%.*}" ] || echo "FAULT $file: its bytes are not as they were attached"
              done
              for digest in $(grep -E '^[0-9a-f]+ ATTACHMENT' records.txt | tr '\\t' '\\n' | grep '^sha256=' | cut -d= -f2 | sort -u); do
                ls files/$digest.* > /dev/null 2>&1 || echo "FAULT files: $digest is missing"
              done; echo "$n files"

            All is sound when no line begins with FAULT. In (3) a line with < is what a change says, one with > what the
            record is. Compare the end of the chain with one that was noted earlier or elsewhere: the line with that digest
            must still be there. Without a digest kept outside, somebody who rules the database and knows this program could
            write the whole chain anew; the file cannot show that.
            """;

    private Recipe() {}
}
