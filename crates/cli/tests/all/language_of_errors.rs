//! What cannot be used, what was odd in a file and what is being done is said in the language
//! that is asked for.

#![allow(clippy::unwrap_used, reason = "tests")]

use crate::common::{first_pass, run};
use rstest::rstest;
use serde_json::Value;
use std::fs;
use std::io::Write;

/// A case file with these lines under [maxillary], from line 3 on.
fn case(lines: &str) -> String {
    format!("case = \"a\"\n[maxillary]\n{lines}\n")
}

/// What `check` complains of, without the program's name.
fn complaint(folder: &std::path::Path, arguments: &[&str], code: &str) -> String {
    let outcome = run(folder, &[arguments, &["--language", code]].concat());
    assert_eq!(outcome.code, Some(2), "{}", outcome.complaint);
    let said = outcome.complaint.strip_prefix("archproof: ").unwrap();
    said.trim_end().to_owned()
}

#[rstest]
#[case::slip(
    "wsh = \"w.ply\"",
    "case.toml: Zeile 3: unbekannter Schlüssel `wsh`; ist wash gemeint? Hier bekannt: ",
    "case.toml: línea 3: clave desconocida: `wsh`; ¿quiso decir wash? Aquí se admiten: "
)]
#[case::backslash(
    "wash = \"C:\\scans\\w.ply\"",
    "case.toml: Zeile 3: ein umgekehrter Schrägstrich in einem Pfad: C:/scans/upper.ply schreiben oder den Pfad in einfache Anführungszeichen setzen ('C:\\scans\\upper.ply')",
    "case.toml: línea 3: hay una barra invertida en una ruta: escriba C:/scans/upper.ply o ponga la ruta entre comillas simples ('C:\\scans\\upper.ply')"
)]
#[case::kind(
    "wash = \"w.ply\"\ntray_thickness_mm = \"two\"",
    "case.toml: Zeile 4: Wert der falschen Art: der Text \"two\"; nötig ist eine Zahl",
    "case.toml: línea 4: valor de tipo incorrecto: el texto \"two\"; se necesita un número"
)]
#[case::impossible(
    "wash = \"w.ply\"\ntray_thickness_mm = 20.0",
    "case.toml: Zeile 4: ein Löffel von 20 mm Dicke ist nicht möglich: die Dicke mit 0.2 bis 8 mm angeben",
    "case.toml: línea 4: una cubeta de 20 mm de grosor no es posible: indique un grosor de 0.2 a 8 mm"
)]
#[case::comma(
    "wash = \"w.ply\"\ntray_thickness_mm = 2,0",
    "case.toml: Zeile 4: nach dem Wert steht noch etwas; eine Angabe je Zeile, Zahlen mit Dezimalpunkt",
    "case.toml: línea 4: después del valor hay algo más; un dato por línea, los números con punto decimal"
)]
#[case::unquoted(
    "wash = w.ply",
    "case.toml: Zeile 3: ein Text gehört in Anführungszeichen",
    "case.toml: línea 3: un texto va entre comillas"
)]
#[case::twice(
    "wash = \"w.ply\"\nwash = \"v.ply\"",
    "case.toml: Zeile 4: derselbe Schlüssel steht zweimal da",
    "case.toml: línea 4: la misma clave aparece dos veces"
)]
#[case::no_impression(
    "tray = \"t.stl\"",
    "case.toml: keine Abformung genannt; before_wash, wash oder one_step unter [maxillary] oder [mandibular] angeben",
    "case.toml: no se nombra ninguna impresión; indique before_wash, wash u one_step en [maxillary] o [mandibular]"
)]
#[case::missing_scan(
    "wash = \"gone.stl\"",
    "case.toml: Zeile 3 nennt einen Scan, der nicht lesbar ist: gone.stl: diese Datei gibt es nicht; den Namen prüfen",
    "case.toml: la línea 3 nombra un escaneo que no se puede leer: gone.stl: este archivo no existe; compruebe el nombre"
)]
#[case::landmarks(
    "wash = \"w.ply\"\nwash_landmarks = \"gone.toml\"",
    "gone.toml: nicht lesbar (die Datei ist nicht vorhanden); den Pfad einer Falldatei oder einer darin genannten Datei angeben",
    "gone.toml: no se puede leer (el archivo no existe); indique la ruta de un archivo de caso o de un archivo nombrado en él"
)]
fn a_case_file_that_cannot_be_used(#[case] lines: &str, #[case] de: &str, #[case] es: &str) {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("case.toml"), case(lines)).unwrap();
    for (code, wanted) in [("de", de), ("es", es)] {
        let said = complaint(folder.path(), &["check", "case.toml"], code);
        assert!(said.starts_with(wanted), "{said}\n{wanted}");
    }
}

#[test]
fn a_scan_that_cannot_be_read_and_a_limit_that_is_impossible() {
    let folder = tempfile::tempdir().unwrap();
    let write = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
    write("page.stl", "<!DOCTYPE html><html><body>404</body></html>");
    write("empty.ply", "");
    write("own.toml", "[limits.show_through_mm]\nvalue = 1.5\n");
    for (arguments, de, es) in [
        (
            &["check", "page.stl"][..],
            "page.stl: ist eine Webseite, kein Scan (Herunterladen misslungen?); die Datei noch einmal holen",
            "page.stl: es una página web, no un escaneo (¿falló la descarga?); obtenga el archivo de nuevo",
        ),
        (
            &["check", "empty.ply"],
            "empty.ply: ist leer; den Scan noch einmal exportieren",
            "empty.ply: está vacío; exporte el escaneo de nuevo",
        ),
        (
            &["check", "empty.ply", "--tray-colour", "red"],
            "--tray-colour: 'red' ist keine Farbe: als #rrggbb angeben, wie sie im Scan aussieht",
            "--tray-colour: 'red' no es un color: indíquelo como #rrggbb, tal como se ve en el escaneo",
        ),
        (
            &["check", "empty.ply", "--protocol", "own.toml"],
            "own.toml: Zeile 2: show_through_mm = 1.5 ist nicht möglich: thin_cover_mm (1) muss größer sein als show_through_mm (1.5)",
            "own.toml: línea 2: show_through_mm = 1.5 no es posible: thin_cover_mm (1) debe ser mayor que show_through_mm (1.5)",
        ),
        (
            &["explain", "thincover"],
            "'thincover' ist kein Code einer Prüfung; ist thin-cover gemeint? („archproof explain“ nennt alle Codes)",
            "'thincover' no es el código de ninguna comprobación; ¿quiso decir thin-cover? («archproof explain» los enumera todos)",
        ),
        (
            &["help", "nothing"],
            "'nothing' ist weder Befehl noch Thema; „archproof help“ nennt sie alle",
            "'nothing' no es una orden ni un tema; «archproof help» los enumera todos",
        ),
    ] {
        assert_eq!(complaint(folder.path(), arguments, "de"), de);
        assert_eq!(complaint(folder.path(), arguments, "es"), es);
    }
}

#[test]
fn what_was_odd_in_a_file_and_what_is_being_done() {
    let folder = first_pass();
    let scan = folder.path().join("first.ply");
    let mut scan = fs::File::options().append(true).open(scan).unwrap();
    scan.write_all(b"twelve bytes").unwrap();
    for (code, oddity, report, steps) in [
        (
            "de",
            "\nBeim Lesen: maxillary-first-pass.ply: 12 Bytes nach dem Ende des Scans weggelassen\n",
            "12 Bytes nach dem Ende des Scans weggelassen",
            [
                "Scans werden gelesen",
                "Rand wird verfolgt",
                "Befunde werden beurteilt",
            ],
        ),
        (
            "es",
            "\nAl leer: maxillary-first-pass.ply: se omitieron 12 bytes después del final del escaneo\n",
            "se omitieron 12 bytes después del final del escaneo",
            ["leyendo los escaneos", "siguiendo el borde", "evaluando"],
        ),
    ] {
        let outcome = run(
            folder.path(),
            &[
                "check",
                "first-pass.toml",
                "--out",
                "results",
                "--times",
                "--language",
                code,
            ],
        );
        assert!(outcome.out.contains(oddity), "{}", outcome.out);
        for step in steps {
            let timed = format!(" s  {step}\n");
            assert!(outcome.complaint.contains(&timed), "{}", outcome.complaint);
        }
        let read = |file: &str| fs::read_to_string(folder.path().join("results").join(file));
        assert!(read("report.html").unwrap().contains(report), "{code}");
        let result: Value = serde_json::from_str(&read("result.json").unwrap()).unwrap();
        let scan = &result["impressions"][0]["scan"];
        assert_eq!(
            scan["warnings"][0],
            "12 bytes after the end of the scan left out"
        );
        assert_eq!(scan["warning_messages"][0][0]["key"], "read-trailing-bytes");
        assert_eq!(result["times"]["steps"][0]["step"], "reading the scans");
    }
}

#[test]
fn help_is_in_the_language_that_is_asked_for() {
    let folder = tempfile::tempdir().unwrap();
    for (code, page, program, command, topics) in [
        (
            "de",
            "# start: ohne Terminal und aus einem Ordner mit Scans\n",
            "Prüft die Qualität von 3D-Scans der Abformungen zahnloser Kiefer.\n\nAufruf: archproof <COMMAND>\n\nBefehle:\n  check ",
            "Alle Fälle eines Ordners nebeneinander prüfen\n\nFälle sind ",
            "\nThemen („archproof help TOPIC“):\n  start            ohne Terminal und ",
        ),
        (
            "es",
            "# start: sin terminal y desde una carpeta de escaneos\n",
            "Comprueba la calidad de los escaneos 3D de impresiones de arcadas edéntulas.\n\nUso: archproof <COMMAND>\n\nÓrdenes:\n  check ",
            "Comprobar todos los casos de una carpeta, varios a la vez\n\nSon casos ",
            "\nTemas («archproof help TOPIC»):\n  start            sin terminal y ",
        ),
        (
            "en",
            "# start: without a terminal, and from a folder of scans\n",
            "Checks the quality of 3D scans",
            "Check every case of a folder, side by side\n\nCases are ",
            "\nTopics ('archproof help TOPIC'):\n  start            without a terminal, ",
        ),
    ] {
        let help = |of: &[&str]| run(folder.path(), &[of, &["--language", code]].concat()).out;
        let start = help(&["help", "start"]);
        assert!(start.starts_with(page), "{start}");
        let all = help(&["help"]);
        assert!(all.starts_with(program) && all.contains(topics), "{all}");
        // Command and topic of one name.
        let batch = help(&["help", "batch"]);
        assert!(
            batch.starts_with(command) && batch.contains("\n# batch: "),
            "{batch}"
        );
        assert_eq!(
            help(&["batch", "--help"]),
            batch.split_once("\n# batch: ").unwrap().0
        );
    }
    let list = run(folder.path(), &["explain", "--language", "de"]).out;
    assert!(
        list.contains("\nthin-cover               ")
            && list.contains("zeigt die Seite zu einem Code"),
        "{list}"
    );
}

#[test]
fn a_check_is_explained_in_the_language_that_is_asked_for() {
    let folder = tempfile::tempdir().unwrap();
    for (code, begin, end) in [
        (
            "de",
            "# thin-cover\n\n## Was\nDas Material über dem Löffel ist dünner, als es sein soll,",
            "\n## Quelle\nÜbliche Praxis, ohne Quelle (MAT-13).\n",
        ),
        (
            "es",
            "# thin-cover\n\n## Qué es\nEl material sobre la cubeta es más delgado de lo que debería,",
            "\n## Fuente\nPráctica habitual, sin fuente (MAT-13).\n",
        ),
    ] {
        let said = run(
            folder.path(),
            &["explain", "thin-cover", "--language", code],
        )
        .out;
        assert!(said.starts_with(begin), "{said}");
        assert!(said.ends_with(end), "{said}");
    }
}

/// Clap says in English what these say in the language that is asked for.
#[rstest]
#[case::option(
    &["check", "a.ply", "--treys", "b.stl"],
    "Fehler: das Argument '--treys' ist nicht bekannt\n\n  Tipp: gemeint ist vielleicht '--trays'\n\nAufruf: archproof check ",
    "Error: no se conoce el argumento '--treys'\n\n  Sugerencia: quizá quiso decir '--trays'\n\nUso: archproof check "
)]
#[case::command(
    &["chek"],
    "Fehler: der Befehl 'chek' ist nicht bekannt\n\n  Tipp: gemeint ist vielleicht 'schema', 'check'\n\nAufruf: archproof ",
    "Error: no se conoce la orden 'chek'\n\n  Sugerencia: quizá quiso decir 'schema', 'check'\n\nUso: archproof "
)]
#[case::value(
    &["check", "a.ply", "--arch", "uper"],
    "Fehler: der Wert 'uper' ist für '--arch <ARCH>' nicht möglich\n\n  Kiefer der Abformung (upper und lower werden auch verstanden) [mögliche Werte: maxillary, mandibular]\n\nMehr dazu",
    "Error: el valor 'uper' no es posible para '--arch <ARCH>'\n\n  Maxilar de la impresión (también se entienden upper y lower) [valores posibles: maxillary, mandibular]\n\nMás información"
)]
#[case::number(
    &["check", "a.ply", "--threads", "0"],
    "Fehler: der Wert '0' ist für '--threads <N>' nicht möglich\n\n  Anzahl der Threads [Vorgabe: einer je Prozessorkern]\n",
    "Error: el valor '0' no es posible para '--threads <N>'\n\n  Número de hilos [por omisión: uno por núcleo]\n"
)]
#[case::no_value(
    &["batch", "in", "--out"],
    "Fehler: '--out <DIR>' braucht einen Wert\n",
    "Error: '--out <DIR>' necesita un valor\n"
)]
#[case::missing(
    &["batch"],
    "Fehler: es fehlt: --out <DIR>, <FOLDER>\n\nAufruf: archproof batch --out <DIR> --language <LANGUAGE> <FOLDER>\n\nMehr dazu mit",
    "Error: falta: --out <DIR>, <FOLDER>\n\nUso: archproof batch --out <DIR> --language <LANGUAGE> <FOLDER>\n\nMás información con"
)]
#[case::conflict(
    &["check", "a.ply", "--tray", "b.stl", "--trays", "c"],
    "Fehler: '--tray <SCAN>' und '--trays <DIR>' lassen sich nicht zusammen verwenden\n",
    "Error: '--tray <SCAN>' y '--trays <DIR>' no se pueden usar juntos\n"
)]
#[case::twice(
    &["check", "a.ply", "--json", "--json"],
    "Fehler: '--json' darf nur einmal angegeben werden\n",
    "Error: '--json' solo se puede indicar una vez\n"
)]
#[case::too_few(
    &["repeat", "a.ply"],
    "Fehler: '<SCAN> <SCAN>...' braucht 2 Werte; angegeben: 1\n",
    "Error: '<SCAN> <SCAN>...' necesita 2 valores; se indicaron 1\n"
)]
fn a_command_line_that_cannot_be_understood(
    #[case] arguments: &[&str],
    #[case] de: &str,
    #[case] es: &str,
) {
    let folder = tempfile::tempdir().unwrap();
    for (code, wanted) in [("de", de), ("es", es)] {
        let asked = format!("--language={code}");
        let first = arguments.len().min(1);
        let given = [&arguments[..first], &[asked.as_str()], &arguments[first..]].concat();
        let outcome = run(folder.path(), &given);
        assert_eq!((outcome.code, outcome.out.as_str()), (Some(2), ""));
        assert!(
            outcome.complaint.starts_with(wanted),
            "{}",
            outcome.complaint
        );
    }
}
