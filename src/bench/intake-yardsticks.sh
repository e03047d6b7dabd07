#!/bin/sh
# Whole-command yardsticks of the intake, in turn on the same files: ours, (a) the plain way, (b) general command-line tools, (c) the floor.
# Use: sh src/bench/intake-yardsticks.sh PHOTOS WORK RUNS [KINDS]   (PHOTOS made by quarterlight.intake.MakePhotos; WORK is emptied again and again)
# Needs: target built by mvn package -DskipTests, libvips-tools, libimage-exiftool-perl, GNU time. The class path of the benches is
# target/test-classes:target/classes:target/lib/*:TESTLIBS, TESTLIBS from the environment (commons-imaging only to make photos).
set -eu
photos=$1 work=$2 runs=$3 kinds=${4:-"ours plain tools floor"}
classes="target/test-classes:target/classes:target/lib/*${TESTLIBS:+:$TESTLIBS}"
java="java -Xmx512m -XX:+UseSerialGC"
timed() { # name command...
    name=$1; shift
    /usr/bin/time -f "$name,%e,%U,%S,%M" -o "$work/time" "$@" > "$work/out" 2>&1 || { cat "$work/out"; exit 1; }
    tail -1 "$work/time"
}
echo "what,wall_s,user_s,system_s,peak_kb"
for run in $(seq "$runs"); do
    for kind in $kinds; do
        rm -rf "$work"; mkdir -p "$work"
        case $kind in
        ours)
            $java -jar target/quarterlight.jar new "$work/visit" --car Any --style coupe > /dev/null
            QUARTERLIGHT_JAVA_OPTIONS=-Xmx512m timed ours target/bin/quarterlight intake "$work/visit" "$photos" ;;
        plain) timed plain $java -cp "$classes" quarterlight.intake.PlainBench "$photos" "$work/copy" ;;
        floor) timed floor $java -cp "$classes" quarterlight.intake.FloorBench "$photos" "$work/copy" ;;
        tools)
            mkdir "$work/small"
            timed tools sh -c 'cd "$1" && cp -r . "$2/copy" && ls | xargs -P2 -n25 sha256sum > "$2/a" &&
                (cd "$2/copy" && ls | xargs -P2 -n25 sha256sum > "$2/b" &&
                ls | xargs -P2 -n25 vipsthumbnail --vips-concurrency=1 -s 320 -o "$2/small/%s.jpg" &&
                ls | xargs -P2 -n125 exiftool -json > "$2/meta")' - "$photos" "$work" ;;
        esac
    done
done
rm -rf "$work"
