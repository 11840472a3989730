#!/usr/bin/env bash
# image.sh FOLDER: builds the image of the Dockerfile without a daemon (buildah, chroot isolation), says its size and what it says of itself, lays it out at FOLDER and has
# tests/operations/image.mjs start and try it. Where the SDK's base cannot be pulled, this machine's own system stands in for it: its /usr is mounted read-only over an empty base.
set -euo pipefail
cd "$(dirname "$0")/.."
folder=$(realpath -m "$1")
commit=$(git rev-parse HEAD)
if ! command -v buildah >/dev/null; then
  apt-get update -qq && apt-get install -y -qq --no-install-recommends buildah crun >/dev/null
fi
work=$(mktemp -d)
store=(--root "$work/store" --runroot "$work/run" --storage-driver vfs)
trap 'buildah "${store[@]}" umount --all >/dev/null 2>&1 || true; rm -rf "$work"' EXIT

base=$(sed -n 's/^ARG SDK=//p' Dockerfile)
arguments=(--build-arg "COMMIT=$commit")
if timeout 60 buildah "${store[@]}" pull --quiet "$base" >/dev/null 2>&1; then
  echo "base: $base"
else
  echo "base: a stand-in for $base, which cannot be pulled here: $(. /etc/os-release && echo "$PRETTY_NAME"), SDK $(dotnet --version)"
  command -v clang >/dev/null || { apt-get update -qq && apt-get install -y -qq --no-install-recommends clang zlib1g-dev >/dev/null; }
  mkdir -p "$work"/base/{usr,var/lib/dpkg,root/.nuget,tmp,proc,sys,dev,opt} "$HOME/.nuget/packages"
  for link in bin sbin lib lib64; do ln -s "usr/$link" "$work/base/$link"; done
  mkdir "$work/base/etc"
  cp -a /etc/{alternatives,ssl,ld.so.cache,ld.so.conf,ld.so.conf.d,passwd,group,nsswitch.conf,os-release} "$work/base/etc/"
  printf 'FROM scratch\nCOPY . /\nENV PATH=/usr/sbin:/usr/bin:/sbin:/bin DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 HOME=/root\n' >"$work/base.containerfile"
  buildah "${store[@]}" build --quiet --isolation chroot -f "$work/base.containerfile" -t stand-in "$work/base" >/dev/null
  arguments+=(--build-arg SDK=localhost/stand-in --volume /usr:/usr:ro --volume /var/lib/dpkg:/var/lib/dpkg:ro --volume "$HOME/.nuget:/root/.nuget")
fi

buildah "${store[@]}" build --isolation chroot --format docker "${arguments[@]}" -t setup-service . >"$work/build.log" 2>&1 || { cat "$work/build.log"; exit 1; }
grep -E 'packages that ship' "$work/build.log"
said=$(buildah "${store[@]}" inspect --type image --format '{{.Docker.Config.User}} {{.Docker.Config.Healthcheck.Test}} {{.Docker.Config.Env}} {{.Docker.Config.Entrypoint}}' setup-service)
echo "user, health check, environment, program: $said"
[[ $said == "1654:1654 [CMD /app/SetupService.Api health]"* ]] || { echo "it says another user or health check"; exit 1; }
buildah "${store[@]}" push --quiet setup-service "oci:$work/oci" >/dev/null
echo "compressed, as it is pulled: $(du -sb "$work/oci" | awk '{ printf "%.1f MiB", $1 / 1048576 }')"

rm -rf "$folder"
container=$(buildah "${store[@]}" from setup-service)
cp -a "$(buildah "${store[@]}" mount "$container")" "$folder"

# The list of parts against the standard's own schema.
npm install --silent --no-audit --no-fund --prefix "$work/npm" @cyclonedx/cyclonedx-library@10.3.0 ajv@8 ajv-formats@3 ajv-formats-draft2019@1 >/dev/null
NODE_PATH=$work/npm/node_modules node -e '
  const { Validation, Spec } = require("@cyclonedx/cyclonedx-library");
  new Validation.JsonStrictValidator(Spec.Version.v1dot6).validate(require("fs").readFileSync(process.argv[1], "utf8")).then((fault) => {
    if (fault) throw new Error(JSON.stringify(fault));
    console.log("the list of parts is CycloneDX 1.6");
  });
' "$folder/app/sbom.cdx.json"

# On a processor that lacks what it was built for, it says so.
command -v qemu-x86_64 >/dev/null || { apt-get update -qq && apt-get install -y -qq --no-install-recommends qemu-user >/dev/null; }
said=$(cd "$work" && qemu-x86_64 -cpu Nehalem -L "$folder" "$folder/app/SetupService.Api" health http://127.0.0.1:1 2>&1 || true)
grep -o 'The required instruction sets are not supported.*' <<<"$said" || { echo "on an old processor it says: $said"; exit 1; }

node tests/operations/image.mjs "$folder" "$commit"
