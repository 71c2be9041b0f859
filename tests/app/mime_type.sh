#!/bin/sh
# mime_type.sh MIME.xml CASE: a case is known by its name, and by its content under another name.
set -eu
root=$(mktemp -d)
trap 'rm -rf "$root"' EXIT
mkdir -p "$root/mime/packages"
cp "$1" "$root/mime/packages"
update-mime-database "$root/mime"
export XDG_DATA_HOME="$root"
export XDG_CACHE_HOME="$root"
type_of() {
    gio info -a standard::content-type "$1" | sed -n 's/.*content-type: //p'
}
wanted="application/vnd.frontwright.case+json"
cp "$2" "$root/chest.frontwright"
cp "$2" "$root/chest"
for file in "$root/chest.frontwright" "$root/chest"; do
    found=$(type_of "$file")
    [ "$found" = "$wanted" ] || { echo "$file is $found"; exit 1; }
done
