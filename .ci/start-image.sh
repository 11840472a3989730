#!/usr/bin/env bash
# start-image.sh ROOT [ARGUMENT...]: runs the program of an image laid out at ROOT as the image says: its user, its environment, its root read-only, without rights. Where no
# container engine runs, a mount namespace and chroot do the same. The process keeps its number, so that signals and measurements reach the service. Needs root and util-linux.
# LAID_OUT names a file into which the time is written, seconds since 1970, at which all that an engine does is done and the program begins.
set -euo pipefail
exec unshare --mount --propagation private bash -euc '
  root=$(realpath "$1")
  shift
  mount --bind "$root" "$root"
  mount -o remount,bind,ro,nosuid,nodev "$root"
  mount --bind /dev "$root/dev"
  mount -t proc proc "$root/proc"
  export urls="${urls:-http://+:8080}" SSL_CERT_FILE=/etc/ssl/certs/ca-certificates.crt DOTNET_GCgen0size="${DOTNET_GCgen0size:-1000000}"
  [[ -z ${LAID_OUT:-} ]] || echo "$EPOCHREALTIME" >"$LAID_OUT"
  exec setpriv --bounding-set=-all,+sys_chroot,+setuid,+setgid --no-new-privs \
    chroot --userspec=1654:1654 --groups= "$root" /app/SetupService.Api "$@"
' start-image "$@"
