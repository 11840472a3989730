#!/usr/bin/env bash
# image-root.sh PROGRAM COMMIT ROOT: lays out in ROOT what the image holds: the program, the libraries it loads, certificates, a user without rights, licences, and the list of all
# parts (CycloneDX). Runs where the program was built, so that it is given the C library it was linked with.
set -euo pipefail
program=$(realpath "$1") commit=$2 root=$3
here=$(dirname "$(realpath "$0")")
libraries=lib/x86_64-linux-gnu
mkdir -p "$root"/{app/licences,etc/ssl/certs,lib64,"$libraries",proc,sys,dev,tmp}
chmod 1777 "$root/tmp"

install -m 755 "$program" "$root/app/"

# What it is linked with, and OpenSSL, which the runtime looks for when it starts to encrypt or to sign.
linked=$(ldd "$program" | grep -oE '/[^ ]+')
openssl=$(/sbin/ldconfig -p | grep -oE '/[^ ]*x86_64-linux-gnu/lib(ssl|crypto)\.so\.3$')
mapfile -t files <<<"$linked"$'\n'"$openssl"
packages=$(mktemp)
for file in "${files[@]}"; do
  case $file in
    /lib64/*) install -m 755 "$(realpath "$file")" "$root$file" ;;
    *) install -m 755 "$(realpath "$file")" "$root/$libraries/$(basename "$file")" ;;
  esac
  # Packages name a file with /usr before it or without.
  { dpkg -S "/usr${file#/usr}" 2>/dev/null || dpkg -S "${file#/usr}" 2>/dev/null || dpkg -S "$(realpath "$file")"; } | cut -d: -f1 >>"$packages"
done

cp -L /etc/ssl/certs/ca-certificates.crt "$root/etc/ssl/certs/"
echo ca-certificates >>"$packages"
echo 'hosts: files dns' >"$root/etc/nsswitch.conf"
echo 'app:x:1654:1654::/nonexistent:/nonexistent' >"$root/etc/passwd"
echo 'app:x:1654:' >"$root/etc/group"

sort -u -o "$packages" "$packages"
while read -r package; do cp -L "/usr/share/doc/$package/copyright" "$root/app/licences/$package.txt"; done <"$packages"
cp "$here/../LICENSE" "$root/app/"
distribution=$(. /etc/os-release && echo "$ID")
xargs dpkg-query -W -f "$distribution"'\t${Package}\t${Version}\t${Architecture}\n' <"$packages" >"$packages.tsv"
dotnet run "$here/notices.cs" -- "$here/../src/SetupService.Api/obj/project.assets.json" "$packages.tsv" "$commit" "$root/app"
