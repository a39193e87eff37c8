<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AboutPage</name>
    <message>
        <source>Temperature and rain: Legates and Willmott 1989 and CRU CL 2.0 (New, Lister, Hulme, Makin 2002), as mapped by Marble; adapted. Licence: CC BY-SA 3.0.</source>
        <translation>Temperatur und Regen: Legates und Willmott 1989 und CRU CL 2.0 (New, Lister, Hulme, Makin 2002), kartiert von Marble; angepasst. Lizenz: CC BY-SA 3.0.</translation>
    </message>
    <message>
        <source>Heights and sea air: ETOPO5 and COADS, NOAA, as packed with Ferret.</source>
        <translation>Höhen und Seeluft: ETOPO5 und COADS, NOAA, wie mit Ferret verpackt.</translation>
    </message>
    <message>
        <source>Coastline: made with Natural Earth, public domain.</source>
        <translation>Küstenlinie: mit Natural Earth erstellt, gemeinfrei.</translation>
    </message>
    <message>
        <source>The invented rig, its tracks and photos: made for this program, CC0 1.0.</source>
        <translation>Das erfundene Fahrzeug, seine Spuren und Fotos: für dieses Programm gemacht, CC0 1.0.</translation>
    </message>
    <message>
        <source>public domain</source>
        <translation>gemeinfrei</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Über das Programm</translation>
    </message>
    <message>
        <source>Looks after a rig without a network: what was looked at, by whom, what was found. Nothing leaves this device unless you exchange or copy it.</source>
        <translation>Betreut ein Fahrzeug ohne Netz: was angesehen wurde, von wem, was gefunden wurde. Nichts verlässt dieses Gerät, außer Sie tauschen oder kopieren es.</translation>
    </message>
    <message>
        <source>Licence of the program: Apache 2.0. It comes without any warranty.</source>
        <translation>Lizenz des Programms: Apache 2.0. Es kommt ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>Where data come from</source>
        <translation>Woher Daten kommen</translation>
    </message>
    <message>
        <source>What it is built with, under these licences</source>
        <translation>Womit es gebaut ist, unter diesen Lizenzen</translation>
    </message>
    <message>
        <source>Place names: GeoNames (geonames.org), a choice of them with rounded coordinates. Licence: CC BY 4.0, creativecommons.org/licenses/by/4.0.</source>
        <translation>Ortsnamen: GeoNames (geonames.org), eine Auswahl mit gerundeten Koordinaten. Lizenz: CC BY 4.0, creativecommons.org/licenses/by/4.0.</translation>
    </message>
</context>
<context>
    <name>AcceptPage</name>
    <message>
        <source>Nothing is on hold that could be accepted. A hold for something found cannot be accepted by anyone.</source>
        <translation>Kein Halt, der sich hinnehmen ließe. Einen Halt für einen Befund kann niemand hinnehmen.</translation>
    </message>
    <message>
        <source>One&apos;s own decision</source>
        <translation>Eigener Entschluss</translation>
    </message>
    <message>
        <source>I could not look at %1 because %2. I know that %3 may follow. I move it once, today, on my own decision.</source>
        <comment>point, reason, what may follow</comment>
        <translation>Ich konnte %1 nicht einsehen; Grund: %2. Ich weiß, was folgen kann: %3. Ich bewege es einmal, heute, auf eigenen Entschluss.</translation>
    </message>
    <message>
        <source>because</source>
        <comment>I could not look because</comment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>what may follow</source>
        <translation>was folgen kann</translation>
    </message>
    <message>
        <source>Written down as decided by %1. It ends when the rig is uncoupled, after 24 hours at the latest, and stands on the slip.</source>
        <translation>Eingetragen als Entschluss von %1. Endet beim Abkuppeln, spätestens nach 24 Stunden, und steht auf dem Zettel.</translation>
    </message>
    <message>
        <source>First write in the settings who looks.</source>
        <translation>Erst in den Einstellungen eintragen, wer schaut.</translation>
    </message>
    <message>
        <source>Do not move it</source>
        <translation>Nicht bewegen</translation>
    </message>
    <message>
        <source>I decide so</source>
        <translation>Ich entscheide so</translation>
    </message>
</context>
<context>
    <name>ActButton</name>
    <message>
        <source>%1. %2</source>
        <comment>name of a button, what it leads to</comment>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>AddPointPage</name>
    <message>
        <source>A point of your own</source>
        <translation>Ein eigener Punkt</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Was anzusehen ist</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>When it passes</source>
        <translation>Wann es unauffällig ist</translation>
    </message>
    <message>
        <source>Where one stands</source>
        <translation>Wo man steht</translation>
    </message>
    <message>
        <source>Part of the rig</source>
        <translation>Teil des Fahrzeugs</translation>
    </message>
    <message>
        <source>What fails with it</source>
        <translation>Was damit ausfällt</translation>
    </message>
    <message>
        <source>Every how many months</source>
        <translation>Alle wie viele Monate</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Nach welcher Strecke</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>etwa 10 000 km oder 6000 mi</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>first tell what, where, what fails with it, and how often</source>
        <translation>erst sagen: was, wo, was damit ausfällt und wie oft</translation>
    </message>
</context>
<context>
    <name>AsideRow</name>
    <message>
        <source>Set aside: %1.</source>
        <comment>reason</comment>
        <translation>Beiseitegelegt: %1.</translation>
    </message>
    <message>
        <source>take it over</source>
        <comment>an entry that was set aside</comment>
        <translation>übernehmen</translation>
    </message>
    <message>
        <source>take over: %1</source>
        <comment>entry</comment>
        <translation>übernehmen: %1</translation>
    </message>
</context>
<context>
    <name>BeadPicture</name>
    <message>
        <source>section, to scale; the joint is %1 long</source>
        <translation>Querschnitt, maßstäblich; die Fuge ist %1 lang</translation>
    </message>
</context>
<context>
    <name>BenchField</name>
    <message>
        <source>%1, if known</source>
        <comment>a figure that may stay empty</comment>
        <translation>%1, wenn bekannt</translation>
    </message>
</context>
<context>
    <name>BenchInputs</name>
    <message>
        <source>without a unit: %1</source>
        <comment>unit symbol</comment>
        <translation>ohne Einheit: %1</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>durch Semikolon getrennt</translation>
    </message>
    <message>
        <source>written as 2026-11-24</source>
        <translation>geschrieben als 2026-11-24</translation>
    </message>
    <message>
        <source>left empty: %1</source>
        <comment>the usual figure</comment>
        <translation>wenn leer: %1</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <comment>heading: worked computations</comment>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Numbers worked out on the spot. The maker&apos;s figure goes before any of them.</source>
        <translation>Zahlen, vor Ort gerechnet. Die Herstellerangabe geht jeder vor.</translation>
    </message>
    <message>
        <source>to the questions on %1</source>
        <translation>zu den Fragen über %1</translation>
    </message>
</context>
<context>
    <name>BenchPictures</name>
    <message>
        <source>trailer&apos;s axles</source>
        <translation>Anhängerachsen</translation>
    </message>
    <message>
        <source>%1: coupled %2</source>
        <comment>axle, mass</comment>
        <translation>%1: gekuppelt %2</translation>
    </message>
    <message>
        <source>%1: alone %2</source>
        <comment>axle, mass</comment>
        <translation>%1: allein %2</translation>
    </message>
    <message>
        <source>Section of the bead: %1 wide, %2 high, %3 long</source>
        <translation>Querschnitt der Raupe: %1 breit, %2 hoch, %3 lang</translation>
    </message>
    <message>
        <source>tow vehicle, front axle</source>
        <translation>Zugfahrzeug, Vorderachse</translation>
    </message>
    <message>
        <source>tow vehicle, rear axle</source>
        <translation>Zugfahrzeug, Hinterachse</translation>
    </message>
    <message>
        <source>Tow vehicle and trailer on the scale, one pad an axle: nothing typed yet.</source>
        <translation>Zugfahrzeug und Anhänger auf der Waage, eine Platte je Achse: noch nichts eingegeben.</translation>
    </message>
</context>
<context>
    <name>BenchWords</name>
    <message>
        <source>%1 to %2, in %3 of 100 cases</source>
        <comment>a range, how sure</comment>
        <translation>%1 bis %2, in %3 von 100 Fällen</translation>
    </message>
    <message>
        <source>It can be %1 to %2.</source>
        <comment>limits of a figure</comment>
        <translation>Möglich sind %1 bis %2.</translation>
    </message>
    <message>
        <source>It is at least %1.</source>
        <translation>Mindestens %1.</translation>
    </message>
    <message>
        <source>It is at most %1.</source>
        <translation>Höchstens %1.</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out.</source>
        <translation>Außerhalb dessen, was sich rechnen lässt.</translation>
    </message>
    <message>
        <source>Not a date. Write it as 2026-11-24.</source>
        <translation>Kein Datum. So schreiben: 2026-11-24.</translation>
    </message>
    <message>
        <source>Choose one of the words.</source>
        <translation>Eines der Wörter wählen.</translation>
    </message>
    <message>
        <source>Not understood. Write a whole number.</source>
        <translation>Nicht verstanden. Eine ganze Zahl schreiben.</translation>
    </message>
    <message>
        <source>Not understood. Write it as in the worked example.</source>
        <translation>Nicht verstanden. Wie im Rechenbeispiel schreiben.</translation>
    </message>
    <message>
        <source>Not understood. Write the number alone.</source>
        <translation>Nicht verstanden. Nur die Zahl schreiben.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a figure, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Taken as usual: %1.</source>
        <translation>Üblicher Wert genommen: %1.</translation>
    </message>
    <message>
        <source>Not understood. Write the number with its unit, %1 or another.</source>
        <translation>Nicht verstanden. Die Zahl mit Einheit schreiben, %1 oder eine andere.</translation>
    </message>
    <message>
        <source>%1. Read it again.</source>
        <comment>what does not go together</comment>
        <translation>%1. Noch einmal ablesen.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out. Read it again.</source>
        <translation>Außerhalb dessen, was sich rechnen lässt. Noch einmal ablesen.</translation>
    </message>
    <message>
        <source>This does not go with the other figures. Read it again.</source>
        <translation>Das passt nicht zu den anderen Zahlen. Noch einmal ablesen.</translation>
    </message>
</context>
<context>
    <name>BookRows</name>
    <message numerus="yes">
        <source>%n pass</source>
        <translation>
            <numerusform>%n unauffällig</numerusform>
            <numerusform>%n unauffällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n attention</source>
        <translation>
            <numerusform>%n Auffälligkeit</numerusform>
            <numerusform>%n Auffälligkeiten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not look</source>
        <translation>
            <numerusform>%n nicht eingesehen</numerusform>
            <numerusform>%n nicht eingesehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not fitted</source>
        <translation>
            <numerusform>%n nicht vorhanden</numerusform>
            <numerusform>%n nicht vorhanden</numerusform>
        </translation>
    </message>
    <message>
        <source>road not known</source>
        <translation>Straße unbekannt</translation>
    </message>
    <message>
        <source>smooth road</source>
        <translation>glatte Straße</translation>
    </message>
    <message>
        <source>broken road</source>
        <translation>aufgebrochene Straße</translation>
    </message>
    <message>
        <source>gravel</source>
        <translation>Schotter</translation>
    </message>
    <message>
        <source>washboard</source>
        <translation>Waschbrett</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Feldweg</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) not looked at</source>
        <translation>
            <numerusform>%n Zeile nicht angesehen</numerusform>
            <numerusform>%n Zeilen nicht angesehen</numerusform>
        </translation>
    </message>
    <message>
        <source>from: %1; to: %2</source>
        <comment>places</comment>
        <translation>von: %1; nach: %2</translation>
    </message>
</context>
<context>
    <name>BooksBlock</name>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Logbücher (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Logbooks of this device</source>
        <translation>Logbücher dieses Geräts</translation>
    </message>
    <message>
        <source>back it up: copy it with its photos</source>
        <translation>Sicherungskopie anlegen: mit seinen Fotos kopieren</translation>
    </message>
    <message>
        <source>bring a backup back, as a logbook of its own</source>
        <translation>eine Sicherungskopie zurückholen, als eigenes Logbuch</translation>
    </message>
    <message>
        <source>look round an invented rig</source>
        <translation>ein erfundenes Fahrzeug ansehen</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>das erfundene Fahrzeug entfernen</translation>
    </message>
    <message>
        <source>Where the copy goes</source>
        <translation>Wohin die Kopie kommt</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>Sicherungskopie eines Logbuchs</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>Photos now, marks after</source>
        <translation>Jetzt Fotos, danach Einträge</translation>
    </message>
    <message>
        <source>Photo of the finding</source>
        <translation>Foto des Befunds</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>was die Kamera sieht</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>Die Kamera startet …</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
    <message>
        <source>The last photo, faint, to stand where it was taken</source>
        <translation>Das letzte Foto, blass, um am selben Platz zu stehen</translation>
    </message>
    <message>
        <source>shown</source>
        <comment>the faint photo</comment>
        <translation>eingeblendet</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>the faint photo</comment>
        <translation>ausgeblendet</translation>
    </message>
    <message>
        <source>Both hands for the ladder: take them here, or from a camera on a pole by file. Mark with both feet on the ground.</source>
        <translation>Beide Hände für die Leiter: hier aufnehmen, oder von einer Kamera an der Stange als Datei. Einträge mit beiden Füßen am Boden.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Zurück zum Befund</translation>
    </message>
    <message>
        <source>Light of the camera</source>
        <translation>Licht der Kamera</translation>
    </message>
    <message>
        <source>on</source>
        <comment>the light</comment>
        <translation>an</translation>
    </message>
    <message>
        <source>off</source>
        <comment>the light</comment>
        <translation>aus</translation>
    </message>
</context>
<context>
    <name>CautionCard</name>
    <message>
        <source>read: go on</source>
        <comment>cautions were read</comment>
        <translation>gelesen: weiter</translation>
    </message>
    <message>
        <source>read: the next</source>
        <comment>a caution was read</comment>
        <translation>gelesen: der nächste</translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>%1: %2</source>
        <comment>question: answer</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>CodeWords</name>
    <message>
        <source>The same as words</source>
        <translation>Dasselbe als Wörter</translation>
    </message>
    <message>
        <source>copy the words</source>
        <translation>Wörter kopieren</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Two walks side by side</source>
        <translation>Zwei Rundgänge nebeneinander</translation>
    </message>
    <message>
        <source>Walk round twice, on different days: then this page tells what is new, worse or mended since.</source>
        <translation>Zwei Rundgänge an verschiedenen Tagen machen: dann sagt diese Seite, was seitdem neu, schlimmer oder repariert ist.</translation>
    </message>
</context>
<context>
    <name>CompareRow</name>
    <message>
        <source>%1: then %2, now %3, %4</source>
        <comment>point: state, state, change</comment>
        <translation>%1: damals %2, jetzt %3, %4</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>repariert</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>nicht mehr da, ohne Reparatur</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nicht angesehen</translation>
    </message>
    <message>
        <source>first look</source>
        <translation>erste Durchsicht</translation>
    </message>
    <message>
        <source>no longer fitted</source>
        <translation>nicht mehr vorhanden</translation>
    </message>
    <message>
        <source>%1: %2, was %3</source>
        <comment>reading, now, then</comment>
        <translation>%1: %2, war %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>defect: change</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2, against %3</source>
        <comment>kind of walk, date now, date then</comment>
        <translation>%1, %2, gegen %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>reading: faster than expected</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Held against: %1.</source>
        <comment>how the earlier walk was found</comment>
        <translation>Verglichen mit: %1.</translation>
    </message>
    <message>
        <source>Added to the rig since: %1.</source>
        <translation>Seither am Fahrzeug dazugekommen: %1.</translation>
    </message>
    <message>
        <source>Taken from the rig since: %1.</source>
        <translation>Seither vom Fahrzeug genommen: %1.</translation>
    </message>
    <message>
        <source>Changed on the rig since: %1.</source>
        <translation>Seither am Fahrzeug geändert: %1.</translation>
    </message>
    <message>
        <source>No longer fitted: %1.</source>
        <translation>Nicht mehr vorhanden: %1.</translation>
    </message>
    <message>
        <source>Fitted since: %1.</source>
        <translation>Seither angebaut: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n neu</numerusform>
            <numerusform>%n neu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n worse</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n schlimmer</numerusform>
            <numerusform>%n schlimmer</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n same</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n gleich</numerusform>
            <numerusform>%n gleich</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n better</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n besser</numerusform>
            <numerusform>%n besser</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mended</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n repariert</numerusform>
            <numerusform>%n repariert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gone, without a mend</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n weg, ohne Reparatur</numerusform>
            <numerusform>%n weg, ohne Reparatur</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not looked at</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n nicht angesehen</numerusform>
            <numerusform>%n nicht angesehen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n first look</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n erste Durchsicht</numerusform>
            <numerusform>%n erste Durchsichten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n no longer fitted</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n nicht mehr vorhanden</numerusform>
            <numerusform>%n nicht mehr vorhanden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ConflictRow</name>
    <message>
        <source>shown until someone chooses</source>
        <translation>wird gezeigt, bis jemand wählt</translation>
    </message>
    <message>
        <source>Take this one</source>
        <translation>Diese nehmen</translation>
    </message>
    <message>
        <source>Take this one: %1, %2</source>
        <comment>value, who wrote it</comment>
        <translation>Diese nehmen: %1, %2</translation>
    </message>
</context>
<context>
    <name>ConflictsPage</name>
    <message>
        <source>What differs</source>
        <translation>Was abweicht</translation>
    </message>
    <message>
        <source>Nothing was written differently, and nothing is set aside.</source>
        <translation>Nichts wurde verschieden eingetragen, und nichts ist beiseitegelegt.</translation>
    </message>
    <message>
        <source>Two people wrote without knowing of each other. The choice is written as an entry of its own; both versions stay in the record.</source>
        <translation>Zwei Personen schrieben, ohne voneinander zu wissen. Die Wahl wird als eigener Eintrag geschrieben; beide Fassungen bleiben erhalten.</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Beiseitegelegt</translation>
    </message>
    <message>
        <source>These entries do not count. Take over what you have looked at and want to stand.</source>
        <translation>Diese Einträge zählen nicht. Übernehmen, was Sie angesehen haben und gelten soll.</translation>
    </message>
    <message>
        <source>These entries do not count. Only an owner can take them over.</source>
        <translation>Diese Einträge zählen nicht. Nur ein Halter kann sie übernehmen.</translation>
    </message>
    <message>
        <source>Take over all of them</source>
        <translation>Alle übernehmen</translation>
    </message>
</context>
<context>
    <name>CurrentLine</name>
    <message>
        <source>all of them</source>
        <comment>points of one line</comment>
        <translation>alle</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: state</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Pass: %1</source>
        <comment>what it takes</comment>
        <translation>Unauffällig: %1</translation>
    </message>
</context>
<context>
    <name>DemoBand</name>
    <message>
        <source>An invented rig to look round: nothing of it is real, and none of it gets into your own logbook.</source>
        <translation>Ein erfundenes Fahrzeug zum Ansehen: nichts davon ist echt, und nichts davon kommt in Ihr eigenes Logbuch.</translation>
    </message>
    <message>
        <source>to my own logbook</source>
        <translation>zu meinem eigenen Logbuch</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>das erfundene Fahrzeug entfernen</translation>
    </message>
</context>
<context>
    <name>DeviceRow</name>
    <message>
        <source>%1: %2</source>
        <comment>device, role</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>revoke</source>
        <comment>a device</comment>
        <translation>widerrufen</translation>
    </message>
    <message>
        <source>revoke %1</source>
        <comment>device</comment>
        <translation>%1 widerrufen</translation>
    </message>
    <message>
        <source>Revoking cannot take back what that device has read: it keeps it. From now on it gets nothing new, and what it writes from now on is set aside for you to look at. What it wrote and has not exchanged yet is set aside too.</source>
        <translation>Widerrufen nimmt nicht zurück, was das Gerät gelesen hat: es behält es. Ab jetzt erhält es nichts Neues, und was es ab jetzt schreibt, wird für Sie zum Ansehen beiseitegelegt. Was es schrieb und noch nicht ausgetauscht hat, ebenfalls.</translation>
    </message>
    <message>
        <source>Why, for the record; may stay empty</source>
        <translation>Warum, zur Aufzeichnung; kann leer bleiben</translation>
    </message>
    <message>
        <source>Revoke %1</source>
        <comment>device</comment>
        <translation>%1 widerrufen</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>lassen, wie es ist</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>Draw on the photo</source>
        <translation>Auf das Foto zeichnen</translation>
    </message>
    <message>
        <source>lines are kept beside the photo, which stays as it is</source>
        <translation>Linien werden neben dem Foto abgelegt; es bleibt, wie es ist</translation>
    </message>
    <message>
        <source>No finding with a photo is open.</source>
        <translation>Kein Befund mit Foto ist offen.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Zurück zum Befund</translation>
    </message>
    <message>
        <source>This is its small picture: the photo itself is on another device.</source>
        <translation>Dies ist das kleine Bild: das Foto selbst ist auf einem anderen Gerät.</translation>
    </message>
    <message>
        <source>ask for the photo in full</source>
        <translation>das ganze Foto anfordern</translation>
    </message>
</context>
<context>
    <name>DrawTools</name>
    <message>
        <source>Now touch the rim.</source>
        <translation>Jetzt den Rand berühren.</translation>
    </message>
    <message>
        <source>Touch the middle, then the rim; or drag.</source>
        <translation>Mitte berühren, dann den Rand; oder ziehen.</translation>
    </message>
    <message>
        <source>Now touch what it points at.</source>
        <translation>Jetzt berühren, worauf er zeigt.</translation>
    </message>
    <message>
        <source>Touch the tail, then what it points at; or drag.</source>
        <translation>Ende berühren, dann worauf er zeigt; oder ziehen.</translation>
    </message>
    <message>
        <source>Now touch the other end.</source>
        <translation>Jetzt das andere Ende berühren.</translation>
    </message>
    <message>
        <source>Touch one end, then the other; or drag.</source>
        <translation>Ein Ende berühren, dann das andere; oder ziehen.</translation>
    </message>
    <message>
        <source>circle</source>
        <comment>tool</comment>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>tool</comment>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>tool</comment>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Length, if known; left empty it is told from the first ruler</source>
        <translation>Länge, wenn bekannt; leer ergibt sie sich aus dem ersten Maßstab</translation>
    </message>
    <message>
        <source>Known length, such as that of a tape or a rivet head</source>
        <translation>Bekannte Länge, etwa eines Maßbands oder Nietkopfs</translation>
    </message>
    <message>
        <source>such as 120 mm or 4 3/4 in</source>
        <translation>etwa 120 mm oder 4 3/4 in</translation>
    </message>
    <message>
        <source>erase last</source>
        <comment>line on a photo</comment>
        <translation>letzte löschen</translation>
    </message>
    <message>
        <source>erase all</source>
        <comment>lines on a photo</comment>
        <translation>alle löschen</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>rückgängig</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>about %1</source>
        <comment>a length told by ratio</comment>
        <translation>etwa %1</translation>
    </message>
</context>
<context>
    <name>DrawnLines</name>
    <message>
        <source>circle</source>
        <comment>drawn on a photo</comment>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>drawn on a photo</comment>
        <translation>Pfeil</translation>
    </message>
    <message>
        <source>ruler, %1</source>
        <comment>drawn on a photo, length</comment>
        <translation>Maßstab, %1</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>drawn on a photo</comment>
        <translation>Maßstab</translation>
    </message>
</context>
<context>
    <name>DueFilters</name>
    <message>
        <source>all of them</source>
        <comment>due points</comment>
        <translation>alle</translation>
    </message>
    <message>
        <source>past due</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>within a month</source>
        <translation>binnen eines Monats</translation>
    </message>
    <message>
        <source>within a season</source>
        <translation>binnen einer Saison</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>nach Datum</translation>
    </message>
    <message>
        <source>by concern</source>
        <translation>nach Bedenken</translation>
    </message>
    <message>
        <source>every zone</source>
        <translation>alle Bereiche</translation>
    </message>
    <message>
        <source>showing %1, %2, %3</source>
        <comment>which points, zone, order</comment>
        <translation>gezeigt: %1, %2, %3</translation>
    </message>
    <message>
        <source>%1; folds the choices away</source>
        <translation>%1; klappt die Auswahl zu</translation>
    </message>
    <message>
        <source>%1; unfolds the choices</source>
        <translation>%1; klappt die Auswahl auf</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welche</translation>
    </message>
    <message>
        <source>In which order</source>
        <translation>In welcher Reihenfolge</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Bereich</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Due</source>
        <comment>heading: what is due when</comment>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Nothing is worked out yet: the bands come with the first walk.</source>
        <translation>Noch nichts berechnet: die Spannen kommen mit dem ersten Rundgang.</translation>
    </message>
    <message>
        <source>what to buy for it</source>
        <translation>was dafür zu kaufen ist</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>was, wenn es woanders hingeht</translation>
    </message>
    <message>
        <source>Line: early to late. Ring: likely. Heavy stroke: time to look. Faint upright: by the catalogue alone. Long upright: today.</source>
        <translation>Linie: früh bis spät. Ring: wahrscheinlich. Dicker Strich: Zeit zum Ansehen. Blasse Senkrechte: nach dem Katalog allein. Lange Senkrechte: heute.</translation>
    </message>
    <message>
        <source>Nothing here for that choice.</source>
        <translation>Nichts zu dieser Auswahl.</translation>
    </message>
    <message>
        <source>Nobody has looked at this rig yet, so everything is due at once. Begin with a first look of a quarter of an hour; dates follow from what is marked.</source>
        <translation>Noch niemand hat dieses Fahrzeug angesehen, darum ist alles auf einmal fällig. Mit einer ersten Durchsicht von einer Viertelstunde beginnen; die Termine folgen aus den Einträgen.</translation>
    </message>
    <message>
        <source>Begin with a first look</source>
        <translation>Mit einer ersten Durchsicht beginnen</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>wie es lief</translation>
    </message>
</context>
<context>
    <name>DueRow</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>früh %1, wahrscheinlich %2, spät %3</translation>
    </message>
</context>
<context>
    <name>EmergencyCard</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>zurück</translation>
    </message>
</context>
<context>
    <name>ErrorLine</name>
    <message>
        <source>read</source>
        <comment>puts a message away</comment>
        <translation>gelesen</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>Not understood: %1</source>
        <translation>Nicht verstanden: %1</translation>
    </message>
    <message>
        <source>Check what was typed, and try once more.</source>
        <translation>Eingabe prüfen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Beyond what can be true: %1</source>
        <translation>Kann nicht stimmen: %1</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Zahl und Einheit prüfen.</translation>
    </message>
    <message>
        <source>This version cannot do that: %1</source>
        <translation>Diese Version kann das nicht: %1</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Die neueste Version installieren oder eine andere Datei nehmen.</translation>
    </message>
    <message>
        <source>Not found: %1</source>
        <translation>Nicht gefunden: %1</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>Vielleicht verschoben. Neu auswählen.</translation>
    </message>
    <message>
        <source>Something else has it: %1</source>
        <translation>Etwas anderes hält es belegt: %1</translation>
    </message>
    <message>
        <source>Close other programs that use this logbook, then try once more.</source>
        <translation>Andere Programme mit diesem Logbuch schließen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The disk refused: %1</source>
        <translation>Der Datenträger lehnte ab: %1</translation>
    </message>
    <message>
        <source>Nothing was lost before this. See that the disk is there, has room and may be written to.</source>
        <translation>Bis hierher ging nichts verloren. Nachsehen, ob der Datenträger da ist, Platz hat und beschrieben werden darf.</translation>
    </message>
    <message>
        <source>Damaged: %1</source>
        <translation>Beschädigt: %1</translation>
    </message>
    <message>
        <source>Stop writing to it and open a backup.</source>
        <translation>Nicht weiter hineinschreiben und eine Sicherungskopie öffnen.</translation>
    </message>
    <message>
        <source>No connection: %1</source>
        <translation>Keine Verbindung: %1</translation>
    </message>
    <message>
        <source>Try once more where there is a network.</source>
        <translation>Noch einmal versuchen, wo es ein Netz gibt.</translation>
    </message>
    <message>
        <source>How much it is was not understood.</source>
        <translation>Wie viel es ist, wurde nicht verstanden.</translation>
    </message>
    <message>
        <source>Write for example 14 mm, 1/2 in or 3.</source>
        <translation>Zum Beispiel 14 mm, 1/2 in oder 3 schreiben.</translation>
    </message>
    <message>
        <source>A reading was not understood: %1</source>
        <translation>Ein Messwert wurde nicht verstanden: %1</translation>
    </message>
    <message>
        <source>Write the number with its unit, for example 380 kPa or 55 psi.</source>
        <translation>Die Zahl mit Einheit schreiben, zum Beispiel 380 kPa oder 55 psi.</translation>
    </message>
    <message>
        <source>It is not said what is wrong.</source>
        <translation>Es fehlt, was nicht stimmt.</translation>
    </message>
    <message>
        <source>Choose what it looks like.</source>
        <translation>Wählen, wonach es aussieht.</translation>
    </message>
    <message>
        <source>It is not said how bad it is.</source>
        <translation>Es fehlt, wie schlimm es ist.</translation>
    </message>
    <message>
        <source>Choose one of the five grades.</source>
        <translation>Eine der fünf Stufen wählen.</translation>
    </message>
    <message>
        <source>It is not said why it could not be looked at.</source>
        <translation>Es fehlt, warum es nicht eingesehen wurde.</translation>
    </message>
    <message>
        <source>Choose a reason.</source>
        <translation>Einen Grund wählen.</translation>
    </message>
    <message>
        <source>The spot is not on this rig.</source>
        <translation>Die Stelle liegt nicht an diesem Fahrzeug.</translation>
    </message>
    <message>
        <source>Point at the drawing once more.</source>
        <translation>Noch einmal auf die Zeichnung zeigen.</translation>
    </message>
</context>
<context>
    <name>EverList</name>
    <message>
        <source>Nothing was ever found at a place.</source>
        <translation>Noch nie wurde etwas an einem Ort gefunden.</translation>
    </message>
    <message>
        <source>Found ever, by place: the number in the shape says how often. Its edge is dashed where nothing is open. A hand&apos;s breadth counts as one place.</source>
        <translation>Je gefunden, nach Ort: die Zahl in der Form sagt, wie oft. Ihr Rand ist gestrichelt, wo nichts offen ist. Eine Handbreit gilt als ein Ort.</translation>
    </message>
</context>
<context>
    <name>EverPlaces</name>
    <message>
        <source>once, on %1</source>
        <comment>date</comment>
        <translation>einmal, am %1</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s), first on %1, last on %2</source>
        <comment>dates</comment>
        <translation>
            <numerusform>%n Mal, zuerst am %1, zuletzt am %2</numerusform>
            <numerusform>%n Mal, zuerst am %1, zuletzt am %2</numerusform>
        </translation>
    </message>
    <message>
        <source>last mend on %1</source>
        <comment>date</comment>
        <translation>letzte Reparatur am %1</translation>
    </message>
    <message>
        <source>no mend written</source>
        <translation>keine Reparatur geschrieben</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>when found; when mended</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>; nothing open</source>
        <comment>at a place</comment>
        <translation>; nichts offen</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s) written without a place</source>
        <translation>
            <numerusform>%n Befund ohne Ort</numerusform>
            <numerusform>%n Befunde ohne Ort</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EverRow</name>
    <message>
        <source>place %1: %2, %3, %4</source>
        <comment>number, where, what, how often and when</comment>
        <translation>Ort %1: %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>ExchangeBlock</name>
    <message>
        <source>Exchanging with %1</source>
        <comment>store</comment>
        <translation>Austausch mit %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>what came and went until now stays</source>
        <translation>was bis jetzt kam und ging, bleibt</translation>
    </message>
    <message>
        <source>Stopped. What came and went until then stays; exchange again to go on.</source>
        <translation>Gestoppt. Was bis dahin kam und ging, bleibt; zum Weitermachen neu austauschen.</translation>
    </message>
</context>
<context>
    <name>FileWord</name>
    <message>
        <source>photo from a file</source>
        <translation>Foto aus einer Datei</translation>
    </message>
    <message>
        <source>Photos of the finding</source>
        <translation>Fotos des Befunds</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Fotos (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>FindingList</name>
    <message>
        <source>Nothing found is open. What was not looked at is not known.</source>
        <translation>Kein Befund ist offen. Was nicht angesehen wurde, ist unbekannt.</translation>
    </message>
    <message numerus="yes">
        <source>%n open finding(s)</source>
        <comment>heading over the list</comment>
        <translation>
            <numerusform>%n offener Befund</numerusform>
            <numerusform>%n offene Befunde</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>finding %1: %2, %3, %4</source>
        <comment>number, what, how bad, call</comment>
        <translation>Befund %1: %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>FindingSheet</name>
    <message>
        <source>or</source>
        <translation>oder</translation>
    </message>
    <message>
        <source>something new here</source>
        <translation>etwas Neues hier</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <comment>who, where on earth</comment>
        <translation>%1, bei %2</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>first tell whether it is one of these</source>
        <translation>erst sagen, ob es einer von diesen ist</translation>
    </message>
    <message>
        <source>first tell how bad it is now</source>
        <translation>erst sagen, wie schlimm es jetzt ist</translation>
    </message>
    <message>
        <source>Write down: pass</source>
        <translation>Eintragen: unauffällig</translation>
    </message>
</context>
<context>
    <name>FinishPage</name>
    <message>
        <source>End of the walk</source>
        <translation>Ende des Rundgangs</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Hier aufhören</translation>
    </message>
    <message>
        <source>lines with an attention</source>
        <translation>Zeilen mit Auffälligkeit</translation>
    </message>
    <message>
        <source>lines passed</source>
        <translation>Zeilen unauffällig</translation>
    </message>
    <message>
        <source>lines not fitted</source>
        <translation>Zeilen nicht vorhanden</translation>
    </message>
    <message>
        <source>lines without a look</source>
        <translation>Zeilen nicht angesehen</translation>
    </message>
    <message>
        <source>Every line got a mark. This says what was looked at, not that nothing will fail.</source>
        <translation>Jede Zeile hat einen Eintrag. Dies sagt, was angesehen wurde, nicht, dass nichts versagen wird.</translation>
    </message>
    <message>
        <source>Not looked at; press one to go there:</source>
        <translation>Nicht angesehen; eine drücken, um hinzugehen:</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Offen lassen</translation>
    </message>
    <message>
        <source>it goes on at the same line</source>
        <translation>es geht an derselben Zeile weiter</translation>
    </message>
    <message>
        <source>Finish the walk</source>
        <translation>Rundgang beenden</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) stay without a look</source>
        <translation>
            <numerusform>%n Zeile bleibt ohne Durchsicht</numerusform>
            <numerusform>%n Zeilen bleiben ohne Durchsicht</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FirstLook</name>
    <message>
        <source>First look</source>
        <comment>kind of walk</comment>
        <translation>Erste Durchsicht</translation>
    </message>
    <message>
        <source>What would do most harm if it were wrong, out of all this rig has. The rest can follow in stretches.</source>
        <translation>Was bei einem Fehler am meisten Schaden anrichten würde, von allem an diesem Fahrzeug. Der Rest kann in Etappen folgen.</translation>
    </message>
</context>
<context>
    <name>FittedBlock</name>
    <message>
        <source>A wheel was fitted</source>
        <translation>Ein Rad wurde montiert</translation>
    </message>
    <message>
        <source>Which wheel</source>
        <translation>Welches Rad</translation>
    </message>
    <message>
        <source>Write down the fitting</source>
        <translation>Montage eintragen</translation>
    </message>
    <message>
        <source>its nuts come due after 10, 25 and 50 to 100 miles, until looked at</source>
        <translation>seine Muttern sind nach 10, 25 und 50 bis 100 Meilen fällig, bis sie angesehen sind</translation>
    </message>
    <message>
        <source>its nuts come due after 16, 40 and 80 to 160 km, until looked at</source>
        <translation>seine Muttern sind nach 16, 40 und 80 bis 160 km fällig, bis sie angesehen sind</translation>
    </message>
</context>
<context>
    <name>Glyph</name>
    <message>
        <source>not yet looked at</source>
        <comment>state of a point</comment>
        <translation>noch nicht angesehen</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>state of a point</comment>
        <translation>unauffällig</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>bald reparieren</translation>
    </message>
    <message>
        <source>hold</source>
        <comment>call</comment>
        <translation>Halt</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>state of a point</comment>
        <translation>nicht eingesehen</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>state of a point</comment>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>state of a point</comment>
        <translation>Auffälligkeit</translation>
    </message>
</context>
<context>
    <name>GradeChoice</name>
    <message>
        <source>How bad</source>
        <translation>Wie schlimm</translation>
    </message>
    <message>
        <source>grade %1: %2</source>
        <comment>how bad, in words</comment>
        <translation>Stufe %1: %2</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>No finding is open.</source>
        <translation>Kein Befund ist offen.</translation>
    </message>
    <message>
        <source>mended %1</source>
        <comment>date</comment>
        <translation>repariert %1</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>One begins with attention on a line of a walk, and stays here until a mend closes it.</source>
        <translation>Ein Befund beginnt mit einer Auffälligkeit in einer Zeile eines Rundgangs und bleibt hier, bis eine Reparatur ihn schließt.</translation>
    </message>
    <message>
        <source>first seen %1: on the map</source>
        <comment>where</comment>
        <translation>zuerst gesehen %1: auf der Karte</translation>
    </message>
</context>
<context>
    <name>HoldRow</name>
    <message>
        <source>the finding</source>
        <translation>der Befund</translation>
    </message>
    <message>
        <source>move it once on one&apos;s own decision …</source>
        <translation>einmal auf eigenen Entschluss bewegen …</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>a track, GPX or NMEA</source>
        <translation>eine Spur, GPX oder NMEA</translation>
    </message>
    <message>
        <source>a log of shaking, CSV</source>
        <translation>ein Erschütterungsprotokoll, CSV</translation>
    </message>
    <message>
        <source>weather, CSV or EPW</source>
        <translation>Wetter, CSV oder EPW</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Eine Datei einlesen</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>The road, if you know it</source>
        <translation>Die Straße, wenn Sie sie kennen</translation>
    </message>
    <message>
        <source>There is no trip yet: take its track in first.</source>
        <translation>Noch keine Fahrt: erst ihre Spur einlesen.</translation>
    </message>
    <message>
        <source>Of which trip</source>
        <translation>Zu welcher Fahrt</translation>
    </message>
    <message>
        <source>Where the sensor was</source>
        <translation>Wo der Sensor war</translation>
    </message>
    <message>
        <source>fixed to the rig</source>
        <translation>am Fahrzeug befestigt</translation>
    </message>
    <message>
        <source>in the tow vehicle</source>
        <translation>im Zugfahrzeug</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>where a sensor was</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>A log without speeds needs the drive&apos;s track, or the trip&apos;s mean speed is taken.</source>
        <translation>Ein Protokoll ohne Geschwindigkeiten braucht die Spur der Fahrt, sonst gilt deren mittlere Geschwindigkeit.</translation>
    </message>
    <message>
        <source>Speeds from %1.</source>
        <comment>file name</comment>
        <translation>Geschwindigkeiten aus %1.</translation>
    </message>
    <message>
        <source>track that tells the speed</source>
        <translation>Spur, die die Geschwindigkeit gibt</translation>
    </message>
    <message>
        <source>Tracks (*.gpx *.nmea *.log *.txt)</source>
        <translation>Spuren (*.gpx *.nmea *.log *.txt)</translation>
    </message>
    <message>
        <source>Where it was measured, unless the file says so</source>
        <translation>Wo gemessen wurde, wenn die Datei es nicht sagt</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>woanders</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Breite, Länge in Grad</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>etwa -44.27, 170.10 oder 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Year, for a file of a typical year</source>
        <translation>Jahr, bei einer Datei eines typischen Jahres</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Datei wählen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.epw)</source>
        <translation>Tabellen (*.csv *.txt *.epw)</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <comment>file name</comment>
        <translation>%1 wird gelesen</translation>
    </message>
    <message>
        <source>%1 read; working it out</source>
        <comment>bytes</comment>
        <translation>%1 gelesen; wird ausgewertet</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>nothing of it is written</source>
        <translation>nichts davon wird geschrieben</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the file was written.</source>
        <translation>Gestoppt. Nichts aus der Datei wurde geschrieben.</translation>
    </message>
    <message>
        <source>The reader says: %1</source>
        <comment>in English</comment>
        <translation>Der Leser meldet: %1</translation>
    </message>
    <message>
        <source>The file stays where it is; it is read on this device, and nothing is sent anywhere.</source>
        <translation>Die Datei bleibt, wo sie ist; sie wird auf diesem Gerät gelesen, und nichts wird gesendet.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Say what is asked for above, and take it in once more.</source>
        <translation>Angeben, was oben gefragt ist, und noch einmal einlesen.</translation>
    </message>
    <message>
        <source>Put it right in the file, or export it once more from where it came from.</source>
        <translation>In der Datei berichtigen oder an der Quelle neu exportieren.</translation>
    </message>
    <message>
        <source>Check the number and its unit, or export the file in smaller parts.</source>
        <translation>Zahl und Einheit prüfen oder die Datei in kleineren Teilen exportieren.</translation>
    </message>
    <message>
        <source>It is in the logbook already: nothing has to be done.</source>
        <translation>Schon im Logbuch: nichts zu tun.</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>Vielleicht verschoben. Neu auswählen.</translation>
    </message>
    <message>
        <source>See that the disk is there, has room and may be read.</source>
        <translation>Nachsehen, ob der Datenträger da ist, Platz hat und gelesen werden darf.</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Die neueste Version installieren oder eine andere Datei nehmen.</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of weather were added.</source>
        <translation>
            <numerusform>%n Tag Wetter wurde hinzugefügt.</numerusform>
            <numerusform>%n Tage Wetter wurden hinzugefügt.</numerusform>
        </translation>
    </message>
    <message>
        <source>From %1 to %2, at %3.</source>
        <comment>dates, place</comment>
        <translation>Von %1 bis %2, bei %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) were left out.</source>
        <translation>
            <numerusform>%n Messwert wurde ausgelassen.</numerusform>
            <numerusform>%n Messwerte wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The road of the trip was measured over %1: middle %2 m/km, roughest tenth from %3 m/km on.</source>
        <comment>distance, roughness</comment>
        <translation>Die Straße der Fahrt wurde über %1 gemessen: Mitte %2 m/km, rauestes Zehntel ab %3 m/km.</translation>
    </message>
    <message>
        <source>Nothing told the speed: the mean of the trip was taken.</source>
        <translation>Nichts gab die Geschwindigkeit: das Mittel der Fahrt gilt.</translation>
    </message>
    <message>
        <source>The sensor was not on the rig: what it felt is not what the rig felt.</source>
        <translation>Der Sensor war nicht am Fahrzeug: was er spürte, ist nicht, was das Fahrzeug spürte.</translation>
    </message>
    <message>
        <source>%1 on %2 was added.</source>
        <comment>distance, date</comment>
        <translation>%1 am %2 wurde hinzugefügt.</translation>
    </message>
    <message numerus="yes">
        <source>%n position(s) were left out.</source>
        <translation>
            <numerusform>%n Position wurde ausgelassen.</numerusform>
            <numerusform>%n Positionen wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) in it.</source>
        <translation>
            <numerusform>%n Lücke darin.</numerusform>
            <numerusform>%n Lücken darin.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is there already.</source>
        <translation>%1 ist schon da.</translation>
    </message>
    <message>
        <source>Something is missing for %1.</source>
        <translation>Für %1 fehlt etwas.</translation>
    </message>
    <message>
        <source>%1 could not be taken in. Nothing was written.</source>
        <translation>%1 konnte nicht eingelesen werden. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 of %2 MB</source>
        <translation>%1 von %2 MB</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Take part in a rig</source>
        <translation>An einem Fahrzeug teilnehmen</translation>
    </message>
    <message>
        <source>Words of the owner&apos;s device</source>
        <translation>Wörter vom Gerät des Halters</translation>
    </message>
    <message>
        <source>What this device asks to be; the owner decides</source>
        <translation>Was dieses Gerät sein will; der Halter entscheidet</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Once the owner has enrolled this device and exchanged, exchange with the same store: the rig comes from there.</source>
        <translation>Sobald der Halter dieses Gerät aufgenommen und ausgetauscht hat, mit derselben Ablage austauschen: von dort kommt das Fahrzeug.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>Zu den Ablagen</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>neu beginnen</translation>
    </message>
    <message>
        <source>The owner&apos;s device shows a code under share. Read its picture by camera, or type or paste its words.</source>
        <translation>Das Gerät des Halters zeigt beim Teilen einen Code. Sein Bild mit der Kamera lesen oder seine Wörter eingeben oder einfügen.</translation>
    </message>
    <message>
        <source>every device is lost, the words on paper are left</source>
        <translation>alle Geräte sind verloren, die Wörter auf Papier sind da</translation>
    </message>
    <message>
        <source>The owner reads the picture below, or types its words, and sees six digits too. They must be these.</source>
        <translation>Der Halter liest das Bild unten oder gibt seine Wörter ein und sieht auch sechs Ziffern. Es müssen diese sein.</translation>
    </message>
</context>
<context>
    <name>KeepBlock</name>
    <message>
        <source>Where it was read</source>
        <translation>Wo es gemessen wurde</translation>
    </message>
    <message>
        <source>Keep as reading</source>
        <translation>Als Messwert ablegen</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>erase</source>
        <comment>key of the keypad</comment>
        <translation>zurück</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>key of the keypad</comment>
        <translation>leeren</translation>
    </message>
    <message>
        <source>next</source>
        <comment>key of the keypad</comment>
        <translation>weiter</translation>
    </message>
    <message>
        <source>done</source>
        <comment>key of the keypad</comment>
        <translation>fertig</translation>
    </message>
    <message>
        <source>take away the last figure</source>
        <translation>die letzte Ziffer entfernen</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>Dezimalkomma</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>Dezimalpunkt</translation>
    </message>
    <message>
        <source>above or below zero</source>
        <translation>über oder unter null</translation>
    </message>
    <message>
        <source>fraction bar</source>
        <translation>Bruchstrich</translation>
    </message>
    <message>
        <source>take away all figures</source>
        <translation>alle Ziffern entfernen</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>nächster Messwert</translation>
    </message>
    <message>
        <source>done with the readings</source>
        <translation>mit den Messwerten fertig</translation>
    </message>
    <message>
        <source>keypad for %1</source>
        <comment>what is read</comment>
        <translation>Ziffernfeld für %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <comment>unit</comment>
        <translation>in %1</translation>
    </message>
</context>
<context>
    <name>LabelRow</name>
    <message>
        <source>%1: %2</source>
        <comment>name, figure</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>LastTime</name>
    <message>
        <source>last time</source>
        <translation>letztes Mal</translation>
    </message>
    <message>
        <source>at a glance</source>
        <comment>how it was looked at</comment>
        <translation>auf einen Blick</translation>
    </message>
    <message>
        <source>measured</source>
        <comment>how it was looked at</comment>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>looked</source>
        <comment>how it was looked at</comment>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>what a point got</comment>
        <translation>unauffällig</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>what a point got</comment>
        <translation>Auffälligkeit</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>what a point got</comment>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>what a point got</comment>
        <translation>nicht eingesehen</translation>
    </message>
    <message>
        <source>last: %1</source>
        <comment>a mark: how, what, when, who</comment>
        <translation>letztes Mal: %1</translation>
    </message>
</context>
<context>
    <name>LegEntry</name>
    <message>
        <source>From, year-month-day</source>
        <translation>Von, Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Until, the last day</source>
        <translation>Bis, der letzte Tag</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo es steht</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>woanders</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Breite, Länge in Grad</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>etwa -44.27, 170.10 oder 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Under what</source>
        <translation>Worunter</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>im Freien</translation>
    </message>
    <message>
        <source>under a roof or cover</source>
        <translation>unter Dach oder Plane</translation>
    </message>
    <message>
        <source>Driven in that time; empty for none</source>
        <translation>In der Zeit gefahren; leer für nichts</translation>
    </message>
    <message>
        <source>such as 750 mi</source>
        <translation>etwa 750 mi</translation>
    </message>
    <message>
        <source>such as 1200 km</source>
        <translation>etwa 1200 km</translation>
    </message>
    <message>
        <source>On which road</source>
        <translation>Auf welcher Straße</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>nichts wird geschrieben</translation>
    </message>
</context>
<context>
    <name>LegForm</name>
    <message>
        <source>Not a date: %1</source>
        <translation>Kein Datum: %1</translation>
    </message>
    <message>
        <source>Write year, month and day, such as 2027-01-15.</source>
        <translation>Jahr, Monat und Tag schreiben, etwa 2027-01-15.</translation>
    </message>
    <message>
        <source>Not a place on earth: %1</source>
        <translation>Kein Ort auf der Erde: %1</translation>
    </message>
    <message>
        <source>Choose one, or write latitude and longitude in degrees, such as -44.27, 170.10.</source>
        <translation>Einen wählen oder Breite und Länge in Grad schreiben, etwa -44.27, 170.10.</translation>
    </message>
    <message>
        <source>Not understood: %1</source>
        <translation>Nicht verstanden: %1</translation>
    </message>
    <message>
        <source>Write it as 1200 km or 750 mi.</source>
        <translation>So schreiben: 1200 km oder 750 mi.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Es endet, bevor es beginnt.</translation>
    </message>
    <message>
        <source>Give the last day there, at or after the first.</source>
        <translation>Den letzten Tag dort angeben, am ersten oder danach.</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>road</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>smooth</source>
        <comment>road</comment>
        <translation>glatt</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>road</comment>
        <translation>aufgebrochen</translation>
    </message>
    <message>
        <source>gravel</source>
        <comment>road</comment>
        <translation>Schotter</translation>
    </message>
    <message>
        <source>washboard</source>
        <comment>road</comment>
        <translation>Waschbrett</translation>
    </message>
    <message>
        <source>track</source>
        <comment>road</comment>
        <translation>Feldweg</translation>
    </message>
</context>
<context>
    <name>LinesPage</name>
    <message>
        <source>all</source>
        <comment>lines of a walk</comment>
        <translation>alle</translation>
    </message>
    <message>
        <source>left, %1</source>
        <comment>lines without a mark, how many</comment>
        <translation>übrig, %1</translation>
    </message>
    <message>
        <source>attention, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>Auffälligkeit, %1</translation>
    </message>
    <message>
        <source>pass, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>unauffällig, %1</translation>
    </message>
    <message>
        <source>could not look, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>nicht eingesehen, %1</translation>
    </message>
    <message>
        <source>not fitted, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>nicht vorhanden, %1</translation>
    </message>
    <message>
        <source>every stand</source>
        <translation>alle Standorte</translation>
    </message>
    <message>
        <source>Search the lines</source>
        <translation>Zeilen durchsuchen</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>only one stand</source>
        <translation>nur ein Standort</translation>
    </message>
    <message>
        <source>No line of this walk is like that.</source>
        <translation>Keine Zeile dieses Rundgangs ist so.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LogbookHead</name>
    <message>
        <source>Logbook</source>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>exchange</source>
        <comment>with other devices</comment>
        <translation>Austausch</translation>
    </message>
    <message>
        <source>exchange: %1</source>
        <comment>what waits</comment>
        <translation>Austausch: %1</translation>
    </message>
    <message>
        <source>search</source>
        <translation>suchen</translation>
    </message>
    <message>
        <source>reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>walks</source>
        <translation>Rundgänge</translation>
    </message>
    <message>
        <source>trips</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>mends</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>wie es lief</translation>
    </message>
    <message>
        <source>map</source>
        <translation>Karte</translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>No walk yet.</source>
        <translation>Noch kein Rundgang.</translation>
    </message>
    <message>
        <source>No trip yet.</source>
        <translation>Noch keine Fahrt.</translation>
    </message>
    <message>
        <source>No mend yet.</source>
        <translation>Noch keine Reparatur.</translation>
    </message>
    <message>
        <source>No photo yet.</source>
        <translation>Noch kein Foto.</translation>
    </message>
    <message>
        <source>Compare these two</source>
        <translation>Diese beiden vergleichen</translation>
    </message>
    <message>
        <source>Compare the last two</source>
        <translation>Die letzten beiden vergleichen</translation>
    </message>
    <message>
        <source>or press one more</source>
        <translation>oder noch einen drücken</translation>
    </message>
    <message>
        <source>or press two of them</source>
        <translation>oder zwei davon drücken</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Eine Datei einlesen</translation>
    </message>
    <message>
        <source>a track, a log of shaking, weather</source>
        <translation>eine Spur, ein Erschütterungsprotokoll, Wetter</translation>
    </message>
    <message>
        <source>take back: %1</source>
        <comment>what was written last</comment>
        <translation>rückgängig: %1</translation>
    </message>
</context>
<context>
    <name>LookEntry</name>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, von %2</translation>
    </message>
</context>
<context>
    <name>MapChoices</name>
    <message>
        <source>a finding by its call: hold</source>
        <translation>ein Befund nach seinem Urteil: Halt</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>bald reparieren</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>a finding that is mended or gone</source>
        <translation>ein Befund, der repariert oder verschwunden ist</translation>
    </message>
    <message>
        <source>a stay</source>
        <translation>ein Aufenthalt</translation>
    </message>
    <message>
        <source>the end of a trip</source>
        <translation>das Ende einer Fahrt</translation>
    </message>
    <message>
        <source>A number says how many lie there. A broken line is a worse road. Press a line for its trip, bare land to bring it to the middle.</source>
        <translation>Eine Zahl sagt, wie viele dort liegen. Eine unterbrochene Linie ist eine schlechtere Straße. Eine Linie drücken zeigt ihre Fahrt, freies Land drücken bringt es in die Mitte.</translation>
    </message>
</context>
<context>
    <name>MapMembers</name>
    <message numerus="yes">
        <source>%n thing(s) here</source>
        <comment>on the map</comment>
        <translation>
            <numerusform>%n Sache hier</numerusform>
            <numerusform>%n Sachen hier</numerusform>
        </translation>
    </message>
    <message>
        <source>look closer</source>
        <comment>at the map</comment>
        <translation>näher ansehen</translation>
    </message>
    <message>
        <source>close</source>
        <comment>a list on the map</comment>
        <translation>schließen</translation>
    </message>
</context>
<context>
    <name>MapPage</name>
    <message>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>close</source>
        <comment>what is shown</comment>
        <translation>schließen</translation>
    </message>
    <message>
        <source>what is shown</source>
        <comment>on the map</comment>
        <translation>was gezeigt wird</translation>
    </message>
    <message>
        <source>Nothing of this rig has a place yet.</source>
        <translation>Noch hat nichts von diesem Fahrzeug einen Ort.</translation>
    </message>
    <message>
        <source>A track from a phone or a receiver draws its trip here. A stay shows where the rig stood. A finding lies where it was looked at, if the walk was done with the position on (settings).</source>
        <translation>Eine Spur von einem Telefon oder Empfänger zeichnet hier ihre Fahrt. Ein Aufenthalt zeigt, wo das Fahrzeug stand. Ein Befund liegt, wo er angesehen wurde, wenn der Rundgang mit eingeschalteter Position gemacht wurde (Einstellungen).</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Spur einlesen</translation>
    </message>
    <message>
        <source>Coast: Natural Earth. Names: GeoNames, CC BY 4.0.</source>
        <translation>Küste: Natural Earth. Namen: GeoNames, CC BY 4.0.</translation>
    </message>
</context>
<context>
    <name>MapPaper</name>
    <message>
        <source>nearer</source>
        <comment>map</comment>
        <translation>näher</translation>
    </message>
    <message>
        <source>further away</source>
        <comment>map</comment>
        <translation>weiter weg</translation>
    </message>
    <message>
        <source>all</source>
        <comment>everything on the map</comment>
        <translation>alles</translation>
    </message>
    <message>
        <source>show everything</source>
        <comment>on the map</comment>
        <translation>alles zeigen</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>A trip</source>
        <translation>Eine Fahrt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates of a stay</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date of a stay that goes on</comment>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>A stay</source>
        <translation>Ein Aufenthalt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point of the rig, defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>state of a finding, date</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) here, first: %1</source>
        <translation>
            <numerusform>%n Sache hier, zuerst: %1</numerusform>
            <numerusform>%n Sachen hier, zuerst: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Map, north up; its middle is %1.</source>
        <comment>where</comment>
        <translation>Karte, Norden oben; ihre Mitte: %1.</translation>
    </message>
    <message>
        <source>%1 across.</source>
        <comment>distance</comment>
        <translation>%1 breit.</translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>Wo das Meer ist, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>findings</source>
        <comment>on the map</comment>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>mended ones too</source>
        <comment>findings on the map</comment>
        <translation>auch reparierte</translation>
    </message>
    <message>
        <source>trips</source>
        <comment>on the map</comment>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>stays</source>
        <comment>on the map</comment>
        <translation>Aufenthalte</translation>
    </message>
</context>
<context>
    <name>MarkBar</name>
    <message>
        <source>Pass</source>
        <comment>mark</comment>
        <translation>Unauffällig</translation>
    </message>
    <message>
        <source>Attention</source>
        <comment>mark</comment>
        <translation>Auffälligkeit</translation>
    </message>
</context>
<context>
    <name>MendForm</name>
    <message>
        <source>Write down a mend</source>
        <translation>Eine Reparatur eintragen</translation>
    </message>
    <message>
        <source>What kind of work</source>
        <translation>Welche Arbeit</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Brakes, gas, mains and tires: by licensed people, and to the maker&apos;s figures.</source>
        <translation>Bremsen, Gas, Netzstrom und Reifen: durch zugelassene Fachkräfte und nach Herstellerangaben.</translation>
    </message>
    <message>
        <source>Write down the mend</source>
        <translation>Reparatur eintragen</translation>
    </message>
    <message>
        <source>first tell what kind of work</source>
        <translation>erst die Art der Arbeit angeben</translation>
    </message>
    <message>
        <source>With what and how many</source>
        <translation>Womit und wie viele</translation>
    </message>
    <message>
        <source>such as lap sealant, 2 cartridges; 3 x rivet 3/16 in</source>
        <translation>etwa Dachdichtmasse, 2 Kartuschen; 3 x Niet 3/16 in</translation>
    </message>
</context>
<context>
    <name>MoreWord</name>
    <message>
        <source>further up</source>
        <comment>turn the page without a swipe</comment>
        <translation>weiter oben</translation>
    </message>
    <message>
        <source>further down</source>
        <comment>turn the page without a swipe</comment>
        <translation>weiter unten</translation>
    </message>
</context>
<context>
    <name>NewFinding</name>
    <message>
        <source>first tell which of these it is</source>
        <translation>erst sagen, welcher von diesen es ist</translation>
    </message>
    <message>
        <source>first tell what it is and how bad</source>
        <translation>erst sagen, was es ist und wie schlimm</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>of the points of a line</comment>
        <translation>Welcher</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>etwa 60 mm oder 2 von 8</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>OfferedFinding</name>
    <message>
        <source>mended, it holds</source>
        <translation>repariert, es hält</translation>
    </message>
    <message>
        <source>there again</source>
        <translation>wieder da</translation>
    </message>
    <message>
        <source>still there, the same</source>
        <translation>noch da, unverändert</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>schlechter</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>nicht mehr da</translation>
    </message>
    <message>
        <source>Finding %1, mended: now</source>
        <comment>number</comment>
        <translation>Befund %1, repariert: jetzt</translation>
    </message>
    <message>
        <source>Finding %1 now</source>
        <comment>number</comment>
        <translation>Befund %1 jetzt</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>etwa 60 mm oder 2 von 8</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>OpenFinding</name>
    <message>
        <source>Finding %1 since %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Befund %1 seit %2: %3</translation>
    </message>
    <message>
        <source>Finding %1, mended %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Befund %1, repariert %2: %3</translation>
    </message>
    <message>
        <source>A pass here confirms the mend.</source>
        <translation>Unauffällig hier bestätigt die Reparatur.</translation>
    </message>
</context>
<context>
    <name>PageFoot</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>zurück</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>Notfall</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>A key on paper</source>
        <translation>Ein Schlüssel auf Papier</translation>
    </message>
    <message>
        <source>24 words that own %1 when every device is lost. They are shown once and kept nowhere: write them down, on two papers if you can.</source>
        <comment>rig</comment>
        <translation>24 Wörter, denen %1 gehört, wenn alle Geräte verloren sind. Sie werden einmal gezeigt und nirgends abgelegt: aufschreiben, wenn möglich auf zwei Papiere.</translation>
    </message>
    <message>
        <source>Who has the words and reaches a store owns the logbook. Keep them as you keep the papers of the rig. A paper that was lost or seen is revoked like a device.</source>
        <translation>Wer die Wörter hat und eine Ablage erreicht, dem gehört das Logbuch. Aufbewahren wie die Fahrzeugpapiere. Ein verlorenes oder gesehenes Papier wird widerrufen wie ein Gerät.</translation>
    </message>
    <message>
        <source>Show the words</source>
        <translation>Wörter zeigen</translation>
    </message>
    <message>
        <source>only you look at the screen now</source>
        <translation>jetzt schauen nur Sie auf den Bildschirm</translation>
    </message>
    <message>
        <source>The key of %1</source>
        <comment>rig</comment>
        <translation>Der Schlüssel von %1</translation>
    </message>
    <message>
        <source>The mark of the rig; not secret, it tells this rig from one that somebody made up</source>
        <translation>Das Kennzeichen des Fahrzeugs; nicht geheim, es unterscheidet dieses Fahrzeug von einem erfundenen</translation>
    </message>
    <message>
        <source>Exchange with a store now, so that the store knows this key.</source>
        <translation>Jetzt mit einer Ablage austauschen, damit die Ablage diesen Schlüssel kennt.</translation>
    </message>
    <message>
        <source>It is written down</source>
        <translation>Es ist aufgeschrieben</translation>
    </message>
    <message>
        <source>the words are not shown again</source>
        <translation>die Wörter werden nicht noch einmal gezeigt</translation>
    </message>
</context>
<context>
    <name>PhotoBoard</name>
    <message>
        <source>photo to draw on</source>
        <translation>Foto zum Zeichnen</translation>
    </message>
    <message>
        <source>photo to draw on: %1</source>
        <translation>Foto zum Zeichnen: %1</translation>
    </message>
</context>
<context>
    <name>PhotoChoice</name>
    <message>
        <source>Photos: none yet</source>
        <translation>Fotos: noch keine</translation>
    </message>
    <message>
        <source>leave out</source>
        <comment>a photo</comment>
        <translation>auslassen</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s); press one to draw on it</source>
        <translation>
            <numerusform>%n Foto; drücken, um darauf zu zeichnen</numerusform>
            <numerusform>%n Fotos; eines drücken, um darauf zu zeichnen</numerusform>
        </translation>
    </message>
    <message>
        <source>number %1</source>
        <comment>photo</comment>
        <translation>Nummer %1</translation>
    </message>
    <message>
        <source>take a photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
</context>
<context>
    <name>PhotoPair</name>
    <message>
        <source>then, %1</source>
        <comment>photo</comment>
        <translation>damals, %1</translation>
    </message>
    <message>
        <source>then</source>
        <comment>earlier walk</comment>
        <translation>damals</translation>
    </message>
    <message>
        <source>now, %1</source>
        <comment>photo</comment>
        <translation>jetzt, %1</translation>
    </message>
    <message>
        <source>then, in its place</source>
        <translation>damals, an derselben Stelle</translation>
    </message>
    <message>
        <source>now; press for then</source>
        <translation>jetzt; drücken für damals</translation>
    </message>
    <message>
        <source>now</source>
        <comment>later walk</comment>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>shows then in the place of now</source>
        <translation>zeigt damals anstelle von jetzt</translation>
    </message>
    <message>
        <source>now; press to see then in its place</source>
        <translation>jetzt; drücken, um damals an dieser Stelle zu sehen</translation>
    </message>
</context>
<context>
    <name>PhotoTile</name>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>photo: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>no photo</source>
        <translation>kein Foto</translation>
    </message>
    <message>
        <source>%1; opens it</source>
        <comment>photo</comment>
        <translation>%1; öffnet es</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Rig</source>
        <comment>place: the drawing of the rig</comment>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Due</source>
        <comment>place: what is due when</comment>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Logbook</source>
        <comment>place: walks, trips, mends</comment>
        <translation>Logbuch</translation>
    </message>
    <message>
        <source>Bench</source>
        <comment>place: worked computations</comment>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>Notfall</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>place, what waits there</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>PlaceChoice</name>
    <message>
        <source>kerb side</source>
        <comment>face of the rig</comment>
        <translation>Gehwegseite</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>Fahrbahnseite</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>hinten</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>von oben</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>darunter</translation>
    </message>
    <message>
        <source>not told yet</source>
        <translation>noch nicht angegeben</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <comment>place on the rig</comment>
        <translation>Wo: %1</translation>
    </message>
    <message>
        <source>touch the spot</source>
        <translation>die Stelle berühren</translation>
    </message>
    <message>
        <source>or at a named place</source>
        <translation>oder an einer benannten Stelle</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <source>from the centre line</source>
        <translation>von der Mittellinie</translation>
    </message>
    <message>
        <source>up from the ground</source>
        <translation>über dem Boden</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>length, from where</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <comment>from where</comment>
        <translation>gemessen: %1</translation>
    </message>
</context>
<context>
    <name>PlaceHost</name>
    <message>
        <source>Opening the logbook …</source>
        <translation>Logbuch wird geöffnet …</translation>
    </message>
</context>
<context>
    <name>PlatePicture</name>
    <message>
        <source>picture of a placard: mass, axles, tires, pressure when cold</source>
        <translation>Bild eines Reifenschilds: Masse, Achsen, Reifen, Druck in kaltem Zustand</translation>
    </message>
</context>
<context>
    <name>PlotBoard</name>
    <message>
        <source>%1. %2</source>
        <comment>plot, row</comment>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>PointRow</name>
    <message>
        <source>Every how many months</source>
        <translation>Alle wie viele Monate</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Nach welcher Strecke</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>etwa 10 000 km oder 6000 mi</translation>
    </message>
    <message>
        <source>set this</source>
        <translation>so setzen</translation>
    </message>
    <message>
        <source>as the catalogue has it</source>
        <translation>wie im Katalog</translation>
    </message>
    <message>
        <source>show it again</source>
        <translation>wieder zeigen</translation>
    </message>
    <message>
        <source>hide it</source>
        <translation>verbergen</translation>
    </message>
</context>
<context>
    <name>PointWords</name>
    <message numerus="yes">
        <source>every %n month(s)</source>
        <comment>interval</comment>
        <translation>
            <numerusform>jeden Monat</numerusform>
            <numerusform>alle %n Monate</numerusform>
        </translation>
    </message>
    <message>
        <source>before each move, or after what happens</source>
        <translation>vor jeder Bewegung oder nach einem Vorfall</translation>
    </message>
    <message>
        <source>every %1</source>
        <comment>distance</comment>
        <translation>alle %1</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>every so many months, distance</comment>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>hidden by %1, %2</source>
        <comment>who, date</comment>
        <translation>verborgen von %1, %2</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>eigener</translation>
    </message>
    <message>
        <source>the catalogue has %1</source>
        <comment>interval</comment>
        <translation>im Katalog: %1</translation>
    </message>
    <message>
        <source>it matters on the road</source>
        <translation>es zählt auf der Straße</translation>
    </message>
    <message>
        <source>fire, gas or fumes</source>
        <translation>Feuer, Gas oder Abgas</translation>
    </message>
    <message>
        <source>water gets in</source>
        <translation>Wasser dringt ein</translation>
    </message>
    <message>
        <source>health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>someone can be hurt at camp</source>
        <translation>auf dem Platz kann sich jemand verletzen</translation>
    </message>
    <message>
        <source>comfort</source>
        <translation>Komfort</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>nur Aussehen</translation>
    </message>
    <message>
        <source>every month</source>
        <comment>interval</comment>
        <translation>jeden Monat</translation>
    </message>
</context>
<context>
    <name>PointsPage</name>
    <message>
        <source>Points of this rig</source>
        <translation>Punkte dieses Fahrzeugs</translation>
    </message>
    <message>
        <source>Find a point by a word</source>
        <translation>Einen Punkt nach einem Wort finden</translation>
    </message>
    <message>
        <source>add a point of your own</source>
        <translation>einen eigenen Punkt hinzufügen</translation>
    </message>
</context>
<context>
    <name>QrPicture</name>
    <message>
        <source>The code as a picture; the words below say the same</source>
        <translation>Der Code als Bild; die Wörter darunter sagen dasselbe</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>more figures, if known</source>
        <translation>weitere Zahlen, wenn bekannt</translation>
    </message>
    <message>
        <source>a worked example</source>
        <translation>ein Rechenbeispiel</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>takes away what was typed</comment>
        <translation>neu beginnen</translation>
    </message>
</context>
<context>
    <name>ReadCode</name>
    <message>
        <source>read the picture by camera</source>
        <translation>Bild mit der Kamera lesen</translation>
    </message>
    <message>
        <source>read it from a picture file</source>
        <translation>aus einer Bilddatei lesen</translation>
    </message>
    <message>
        <source>This device has no camera that can be used. Type the words, or read a picture file.</source>
        <translation>Dieses Gerät hat keine nutzbare Kamera. Die Wörter eingeben oder eine Bilddatei lesen.</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>was die Kamera sieht</translation>
    </message>
    <message>
        <source>Hold it straight on, so that the whole picture is seen.</source>
        <translation>Gerade davor halten, sodass das ganze Bild zu sehen ist.</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>Die Kamera startet …</translation>
    </message>
    <message>
        <source>leave the camera</source>
        <translation>Kamera verlassen</translation>
    </message>
    <message>
        <source>Picture of the code</source>
        <translation>Bild des Codes</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Fotos (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>ReadingEntry</name>
    <message>
        <source>last time %1</source>
        <comment>a reading</comment>
        <translation>letztes Mal %1</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <comment>quantity, unit</comment>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>over all walks</source>
        <comment>readings</comment>
        <translation>über alle Rundgänge</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>%1 on %2</source>
        <comment>last reading, date</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>limits</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>Herstellerangabe: nicht eingegeben</translation>
    </message>
    <message>
        <source>Not understood. Write it for example as %1.</source>
        <translation>Nicht verstanden. Zum Beispiel so schreiben: %1.</translation>
    </message>
    <message>
        <source>%1 is outside the limit (%2, %3). Consider attention.</source>
        <translation>%1 liegt außerhalb des Grenzwerts (%2, %3). Auffälligkeit erwägen.</translation>
    </message>
</context>
<context>
    <name>Reason</name>
    <message>
        <source>Water gets in if it fails.</source>
        <translation>Wasser dringt ein, wenn es versagt.</translation>
    </message>
    <message>
        <source>It matters on the road.</source>
        <translation>Es zählt auf der Straße.</translation>
    </message>
    <message>
        <source>Fire, gas or fumes if it fails.</source>
        <translation>Feuer, Gas oder Abgas, wenn es versagt.</translation>
    </message>
    <message>
        <source>It touches health.</source>
        <translation>Es betrifft die Gesundheit.</translation>
    </message>
    <message>
        <source>Someone can be hurt at camp.</source>
        <translation>Auf dem Platz kann sich jemand verletzen.</translation>
    </message>
    <message>
        <source>It is a matter of looks.</source>
        <translation>Es betrifft das Aussehen.</translation>
    </message>
    <message>
        <source>It is a matter of comfort.</source>
        <translation>Es betrifft den Komfort.</translation>
    </message>
    <message>
        <source>You drive about %1 a year, by your own seasons.</source>
        <translation>Sie fahren rund %1 im Jahr, nach Ihren eigenen Jahreszeiten.</translation>
    </message>
    <message>
        <source>Your trips so far come to about %1 a year.</source>
        <translation>Ihre Fahrten bisher ergeben rund %1 im Jahr.</translation>
    </message>
    <message>
        <source>You said about %1 a year.</source>
        <translation>Sie gaben rund %1 im Jahr an.</translation>
    </message>
    <message>
        <source>You said that it does not move.</source>
        <translation>Sie gaben an, dass es nicht bewegt wird.</translation>
    </message>
    <message>
        <source>Nothing is known of how much you drive: %1 a year is taken.</source>
        <translation>Wie viel Sie fahren, ist unbekannt: %1 im Jahr angenommen.</translation>
    </message>
    <message>
        <source>Last looked at on %1.</source>
        <translation>Zuletzt angesehen am %1.</translation>
    </message>
    <message>
        <source>Could not be looked at on %1.</source>
        <translation>Am %1 nicht eingesehen.</translation>
    </message>
    <message>
        <source>Since then: %1.</source>
        <translation>Seither: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Every %n months, counted from %1.</source>
        <translation>
            <numerusform>Jeden Monat, gezählt ab %1.</numerusform>
            <numerusform>Alle %n Monate, gezählt ab %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 driven since.</source>
        <translation>Seither %1 gefahren.</translation>
    </message>
    <message>
        <source>A wheel was fitted on %1; look again from %2 on.</source>
        <translation>Ein Rad wurde am %1 montiert; ab %2 wieder ansehen.</translation>
    </message>
    <message>
        <source>Because of: %1.</source>
        <translation>Wegen: %1.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Noch niemand hat es angesehen.</translation>
    </message>
    <message>
        <source>A limit of zero was left out.</source>
        <translation>Ein Grenzwert von null wurde ausgelassen.</translation>
    </message>
    <message>
        <source>Grade %1 of 5.</source>
        <translation>Stufe %1 von 5.</translation>
    </message>
    <message>
        <source>The next look is taken to be %1 months away.</source>
        <translation>Die nächste Durchsicht wird in %1 Monaten angenommen.</translation>
    </message>
    <message>
        <source>The chance that it fails before then is taken as %1.</source>
        <translation>Die Wahrscheinlichkeit, dass es vorher versagt, wird mit %1 angenommen.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>Die schlechteste Stufe an einem Punkt der Halt-Liste.</translation>
    </message>
    <message>
        <source>It was mended; a look has to confirm it.</source>
        <translation>Es wurde repariert; eine Durchsicht muss es bestätigen.</translation>
    </message>
</context>
<context>
    <name>ReasonChips</name>
    <message>
        <source>Could not look, because</source>
        <translation>Nicht eingesehen, Grund</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>nicht eingesehen: %1</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>ein anderer Grund</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>put the reasons away</comment>
        <translation>jetzt nicht</translation>
    </message>
</context>
<context>
    <name>ReasonsPage</name>
    <message>
        <source>Could not look, because</source>
        <translation>Nicht eingesehen, Grund</translation>
    </message>
    <message>
        <source>Note, if it helps</source>
        <translation>Notiz, wenn sie hilft</translation>
    </message>
</context>
<context>
    <name>RecoverPage</name>
    <message>
        <source>Back by the words on paper</source>
        <translation>Zurück mit den Wörtern auf Papier</translation>
    </message>
    <message>
        <source>Add the store first that has the rig, on the page before this one.</source>
        <translation>Erst die Ablage mit dem Fahrzeug hinzufügen, auf der Seite davor.</translation>
    </message>
    <message>
        <source>The store that has the rig</source>
        <translation>Die Ablage mit dem Fahrzeug</translation>
    </message>
    <message>
        <source>The 24 words</source>
        <translation>Die 24 Wörter</translation>
    </message>
    <message>
        <source>The mark, seven words beside them; may stay empty</source>
        <translation>Das Kennzeichen, sieben Wörter daneben; kann leer bleiben</translation>
    </message>
    <message>
        <source>Own the rig again</source>
        <translation>Wieder Halter sein</translation>
    </message>
    <message>
        <source>Looking at the store …</source>
        <translation>Ablage wird angesehen …</translation>
    </message>
    <message>
        <source>This device owns the rig again.</source>
        <translation>Dieses Gerät ist wieder Halter des Fahrzeugs.</translation>
    </message>
    <message>
        <source>No mark was typed. Compare it with the paper before you trust what comes:</source>
        <translation>Kein Kennzeichen eingegeben. Mit dem Papier vergleichen, bevor Sie dem trauen, was kommt:</translation>
    </message>
    <message>
        <source>Mark of the rig</source>
        <translation>Kennzeichen des Fahrzeugs</translation>
    </message>
    <message>
        <source>Exchange with the store now: the rig comes from there. Then revoke the devices that were lost.</source>
        <translation>Jetzt mit der Ablage austauschen: von dort kommt das Fahrzeug. Dann die verlorenen Geräte widerrufen.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>Zu den Ablagen</translation>
    </message>
</context>
<context>
    <name>ReportScope</name>
    <message>
        <source>The walk: %1</source>
        <translation>Der Rundgang: %1</translation>
    </message>
    <message>
        <source>Against: %1</source>
        <comment>the earlier walk</comment>
        <translation>Gegen: %1</translation>
    </message>
    <message>
        <source>older ones</source>
        <comment>walks</comment>
        <translation>ältere</translation>
    </message>
    <message>
        <source>Findings: all that suit</source>
        <translation>Befunde: alle, die passen</translation>
    </message>
    <message numerus="yes">
        <source>Findings: %n chosen</source>
        <translation>
            <numerusform>Befunde: %n gewählt</numerusform>
            <numerusform>Befunde: %n gewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it stands, how to get there</source>
        <translation>Wo es steht, wie man hinkommt</translation>
    </message>
    <message>
        <source>Power at the place</source>
        <translation>Strom am Platz</translation>
    </message>
    <message>
        <source>Key, and who has it</source>
        <translation>Schlüssel, und wer ihn hat</translation>
    </message>
</context>
<context>
    <name>ReportSigners</name>
    <message>
        <source>take the signature away: %1</source>
        <comment>who signed</comment>
        <translation>Unterschrift wegnehmen: %1</translation>
    </message>
    <message>
        <source>sign on the screen: %1</source>
        <comment>who signs</comment>
        <translation>auf dem Bildschirm unterschreiben: %1</translation>
    </message>
    <message>
        <source>What was signed stays as it stood. Choosing anything else here takes the signatures away.</source>
        <translation>Was unterschrieben ist, bleibt so stehen. Wer hier etwas anderes wählt, nimmt die Unterschriften weg.</translation>
    </message>
</context>
<context>
    <name>ReportsPage</name>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>What should it tell?</source>
        <translation>Was soll er sagen?</translation>
    </message>
    <message>
        <source>another report</source>
        <translation>ein anderer Bericht</translation>
    </message>
    <message>
        <source>Drawing the pages …</source>
        <translation>Die Seiten werden gezeichnet …</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <comment>title of a report</comment>
        <translation>%1, Seite %2 von %3</translation>
    </message>
    <message>
        <source>page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>nächste Seite</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Speichern: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Sheets of paper</source>
        <translation>Papierformat</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper size</comment>
        <translation>Letter (USA)</translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation>Wo es war</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>of a report</comment>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>to about 5 km</source>
        <comment>how exact a place is told</comment>
        <translation>auf etwa 5 km</translation>
    </message>
    <message>
        <source>exact</source>
        <comment>how exact a place is told</comment>
        <translation>genau</translation>
    </message>
    <message>
        <source>What the camera wrote into photos: place, time, its number</source>
        <translation>Was die Kamera in Fotos geschrieben hat: Ort, Zeit, ihre Nummer</translation>
    </message>
    <message>
        <source>kept, in the web page</source>
        <comment>data in photos</comment>
        <translation>bleibt, auf der Webseite</translation>
    </message>
    <message>
        <source>The file lies where you put it; nothing is sent anywhere.</source>
        <translation>Die Datei liegt, wo Sie sie ablegen; nichts wird irgendwohin gesendet.</translation>
    </message>
</context>
<context>
    <name>RigBoard</name>
    <message>
        <source>kerb side</source>
        <comment>face of the rig</comment>
        <translation>Gehwegseite</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>Fahrbahnseite</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>hinten</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>darunter</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>face of the rig, how many findings</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>hier stehen</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>von oben</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>von der Leiter oder mit Kamera an der Stange</translation>
    </message>
</context>
<context>
    <name>RigFoot</name>
    <message>
        <source>fresh water</source>
        <translation>Frischwasser</translation>
    </message>
    <message>
        <source>grey water</source>
        <translation>Grauwasser</translation>
    </message>
    <message>
        <source>black water</source>
        <translation>Schwarzwasser</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>Gasflasche</translation>
    </message>
    <message>
        <source>house battery</source>
        <translation>Bordbatterie</translation>
    </message>
    <message>
        <source>Dashed: where such rigs usually have them, common practice, not measured: %1.</source>
        <translation>Gestrichelt: wo sie meist liegen, gängige Praxis, nicht gemessen: %1.</translation>
    </message>
</context>
<context>
    <name>RigForm</name>
    <message>
        <source>Not understood: %1</source>
        <translation>Nicht verstanden: %1</translation>
    </message>
    <message>
        <source>Write it for example as 6.4 m or 21 ft.</source>
        <translation>Zum Beispiel so schreiben: 6,4 m oder 21 ft.</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Einen aus der Liste wählen.</translation>
    </message>
    <message>
        <source>It has no name, or a very long one.</source>
        <translation>Es hat keinen Namen oder einen sehr langen.</translation>
    </message>
    <message>
        <source>Give the rig a short name.</source>
        <translation>Dem Fahrzeug einen kurzen Namen geben.</translation>
    </message>
    <message>
        <source>The axles cannot be like that.</source>
        <translation>So können die Achsen nicht liegen.</translation>
    </message>
    <message>
        <source>Give each axle&apos;s distance from the front face, foremost first, for example 3.3 m.</source>
        <translation>Abstand jeder Achse von der Front angeben, vorderste zuerst, zum Beispiel 3,3 m.</translation>
    </message>
    <message>
        <source>This cannot be right.</source>
        <translation>Das kann nicht stimmen.</translation>
    </message>
    <message>
        <source>Check the number and its unit, for example 6.4 m or 21 ft.</source>
        <translation>Zahl und Einheit prüfen, zum Beispiel 6,4 m oder 21 ft.</translation>
    </message>
    <message>
        <source>Write it for example as 4.5 bar or 65 psi.</source>
        <translation>Zum Beispiel als 4,5 bar oder 65 psi schreiben.</translation>
    </message>
    <message>
        <source>Write the number with its unit.</source>
        <translation>Die Zahl mit ihrer Einheit schreiben.</translation>
    </message>
    <message>
        <source>Nothing is chosen.</source>
        <translation>Nichts ist gewählt.</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Wählen, was am nächsten kommt.</translation>
    </message>
    <message>
        <source>Choose where the rig is at home.</source>
        <translation>Wählen, wo das Fahrzeug zu Hause ist.</translation>
    </message>
    <message>
        <source>A door, window or vent would lie outside the rig.</source>
        <translation>Eine Tür, ein Fenster oder eine Lüftung läge außerhalb des Fahrzeugs.</translation>
    </message>
    <message>
        <source>Check the length, or move it on the command line with rig set.</source>
        <translation>Die Länge prüfen oder es auf der Befehlszeile mit rig set verschieben.</translation>
    </message>
    <message>
        <source>The placard asks for more than the sidewall allows.</source>
        <translation>Das Reifenschild verlangt mehr, als die Flanke zulässt.</translation>
    </message>
    <message>
        <source>Read both again; a tire shop decides which tire is wrong.</source>
        <translation>Beide noch einmal lesen; ein Reifenbetrieb entscheidet, welcher Reifen falsch ist.</translation>
    </message>
    <message>
        <source>Check it, for example 4.5 bar or 65 psi.</source>
        <translation>Prüfen, zum Beispiel 4,5 bar oder 65 psi.</translation>
    </message>
</context>
<context>
    <name>RigHead</name>
    <message>
        <source>settings</source>
        <comment>page</comment>
        <translation>Einstellungen</translation>
    </message>
</context>
<context>
    <name>RigView</name>
    <message>
        <source>drawing of the rig</source>
        <translation>Zeichnung des Fahrzeugs</translation>
    </message>
    <message>
        <source>drawing of the rig, %1</source>
        <comment>which face</comment>
        <translation>Zeichnung des Fahrzeugs, %1</translation>
    </message>
    <message>
        <source>finding %1: %2, %3</source>
        <comment>number, what, call</comment>
        <translation>Befund %1: %2, %3</translation>
    </message>
    <message>
        <source>place %1: %2, %3</source>
        <comment>number, where, how often and when</comment>
        <translation>Ort %1: %2, %3</translation>
    </message>
</context>
<context>
    <name>RigWords</name>
    <message>
        <source>twin-axle</source>
        <translation>2 Achsen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>axles, kind of rig</comment>
        <translation>%2, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n-axle</source>
        <translation>
            <numerusform>%n Achse</numerusform>
            <numerusform>%n Achsen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 today</source>
        <comment>time</comment>
        <translation>%1 heute</translation>
    </message>
    <message numerus="yes">
        <source>%n on hold: %1.</source>
        <translation>
            <numerusform>%n mit Halt: %1.</numerusform>
            <numerusform>%n mit Halt: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1.</source>
        <translation>
            <numerusform>Kein Halt bei dem %n Punkt, der seit %1 angesehen wurde.</numerusform>
            <numerusform>Kein Halt unter den %n Punkten, die seit %1 angesehen wurden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1 by %2.</source>
        <translation>
            <numerusform>Kein Halt bei dem %n Punkt, der seit %1 von %2 angesehen wurde.</numerusform>
            <numerusform>Kein Halt unter den %n Punkten, die seit %1 von %2 angesehen wurden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be looked at: %1.</source>
        <translation>
            <numerusform>%n wurde nicht eingesehen: %1.</numerusform>
            <numerusform>%n wurden nicht eingesehen: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2 logged</source>
        <translation>%1; %2 im Logbuch</translation>
    </message>
    <message>
        <source>Nothing was looked at yet.</source>
        <translation>Noch nichts angesehen.</translation>
    </message>
    <message numerus="yes">
        <source>%n to mend soon.</source>
        <translation>
            <numerusform>%n bald reparieren.</numerusform>
            <numerusform>%n bald reparieren.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n ist überfällig.</numerusform>
            <numerusform>%n sind überfällig.</numerusform>
        </translation>
    </message>
    <message>
        <source>This says what was looked at, not that nothing will fail.</source>
        <translation>Dies sagt, was angesehen wurde, nicht, dass nichts versagen wird.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>Die schlechteste Stufe an einem Punkt der Halt-Liste.</translation>
    </message>
    <message>
        <source>It is on the hold list and could not be looked at.</source>
        <translation>Steht auf der Halt-Liste und wurde nicht eingesehen.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n minutes</source>
        <translation>
            <numerusform>etwa %n Minute</numerusform>
            <numerusform>etwa %n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>kind of walk, lines, minutes</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1, hidden by %2, %3</source>
        <comment>point, who, date</comment>
        <translation>%1, verborgen von %2, %3</translation>
    </message>
    <message>
        <source>accepted by %1 on %2: %3</source>
        <comment>who, when, because</comment>
        <translation>hingenommen von %1 am %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Hidden: %1</source>
        <comment>points</comment>
        <translation>Verborgen: %1</translation>
    </message>
    <message>
        <source>why</source>
        <comment>opens the grounds of the figures</comment>
        <translation>warum</translation>
    </message>
    <message>
        <source>its measures and plates</source>
        <translation>seine Maße und Schilder</translation>
    </message>
    <message numerus="yes">
        <source>%n of them are jobs of a quarter of an hour and more; their time is not counted. Pass over what is not for today.</source>
        <translation>
            <numerusform>%n davon ist eine Arbeit von einer Viertelstunde und mehr; ihre Zeit zählt nicht mit. Was heute nicht dran ist, übergehen.</numerusform>
            <numerusform>%n davon sind Arbeiten von einer Viertelstunde und mehr; ihre Zeit zählt nicht mit. Was heute nicht dran ist, übergehen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n hours</source>
        <translation>
            <numerusform>etwa %n Stunde</numerusform>
            <numerusform>etwa %n Stunden</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RigsBlock</name>
    <message>
        <source>Rig under care</source>
        <translation>Fahrzeug in Pflege</translation>
    </message>
    <message>
        <source>put %1 away: not offered on this device, its logbook stays</source>
        <comment>rig</comment>
        <translation>%1 weglegen: auf diesem Gerät nicht angeboten, sein Logbuch bleibt</translation>
    </message>
    <message>
        <source>bring back %1</source>
        <comment>rig that was put away</comment>
        <translation>%1 zurückholen</translation>
    </message>
    <message>
        <source>set up another rig</source>
        <translation>weiteres Fahrzeug einrichten</translation>
    </message>
</context>
<context>
    <name>RoadLine</name>
    <message>
        <source>Roughness along the way: %1 to %2 m/km, the roughest %3 from where the log began.</source>
        <translation>Rauheit unterwegs: %1 bis %2 m/km, am rauesten %3 nach Beginn des Protokolls.</translation>
    </message>
</context>
<context>
    <name>SearchModel</name>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>note on a walk</source>
        <translation>Notiz eines Rundgangs</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>trip</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>Aufenthalt</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
</context>
<context>
    <name>SearchPage</name>
    <message>
        <source>Search</source>
        <translation>Suche</translation>
    </message>
    <message>
        <source>Words, or how they begin</source>
        <translation>Wörter, oder wie sie anfangen</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Suche läuft …</translation>
    </message>
    <message>
        <source>Findings, notes, mends, trips and points of this rig. Accents do not matter.</source>
        <translation>Befunde, Notizen, Reparaturen, Fahrten und Punkte dieses Fahrzeugs. Akzente sind gleichgültig.</translation>
    </message>
    <message>
        <source>Nothing of this rig has these words.</source>
        <translation>Nichts an diesem Fahrzeug hat diese Wörter.</translation>
    </message>
</context>
<context>
    <name>SeasonRuler</name>
    <message>
        <source>the year, and where the rig will be: %1</source>
        <translation>das Jahr, und wo das Fahrzeug sein wird: %1</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Who looks</source>
        <comment>name written with each mark</comment>
        <translation>Wer schaut</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>day</source>
        <comment>theme</comment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>night</source>
        <comment>theme</comment>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>sun, black on white</source>
        <comment>theme</comment>
        <translation>Sonne, schwarz auf weiß</translation>
    </message>
    <message>
        <source>Hands; gloves get larger places to press</source>
        <translation>Hände; mit Handschuhen größere Felder</translation>
    </message>
    <message>
        <source>bare hands</source>
        <translation>bloße Hände</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>Handschuhe</translation>
    </message>
    <message>
        <source>Size of words</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>size of words</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Units shown; typing takes either</source>
        <translation>Gezeigte Einheiten; eingeben geht in beiden</translation>
    </message>
    <message>
        <source>metres, kilometres, kPa, °C</source>
        <translation>Meter, Kilometer, kPa, °C</translation>
    </message>
    <message>
        <source>feet, miles, psi, °F</source>
        <translation>Fuß, Meilen, psi, °F</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>points of this rig: add, hide, how often</source>
        <translation>Punkte dieses Fahrzeugs: hinzufügen, verbergen, wie oft</translation>
    </message>
    <message>
        <source>exchange with other devices</source>
        <translation>Austausch mit anderen Geräten</translation>
    </message>
    <message>
        <source>about: version, data, licences</source>
        <translation>über das Programm: Version, Daten, Lizenzen</translation>
    </message>
    <message>
        <source>A buzz in the hand when a mark is written</source>
        <translation>Vibrieren in der Hand, wenn ein Eintrag geschrieben ist</translation>
    </message>
    <message>
        <source>on</source>
        <comment>setting</comment>
        <translation>an</translation>
    </message>
    <message>
        <source>off</source>
        <comment>setting</comment>
        <translation>aus</translation>
    </message>
    <message>
        <source>A soft tick when a mark is written</source>
        <translation>Leises Ticken, wenn ein Eintrag geschrieben ist</translation>
    </message>
</context>
<context>
    <name>SetupFitted</name>
    <message>
        <source>What is usual is chosen already. It decides what the walks ask about.</source>
        <translation>Das Übliche ist schon gewählt. Davon hängt ab, wonach die Rundgänge fragen.</translation>
    </message>
    <message>
        <source>Fitted to it</source>
        <translation>Was es hat</translation>
    </message>
    <message>
        <source>more that may be fitted</source>
        <translation>weiteres, was es haben kann</translation>
    </message>
    <message>
        <source>What the roof is made of</source>
        <translation>Woraus das Dach ist</translation>
    </message>
    <message>
        <source>May the roof carry a person?</source>
        <translation>Darf das Dach eine Person tragen?</translation>
    </message>
</context>
<context>
    <name>SetupForm</name>
    <message>
        <source>Your rig</source>
        <translation>Ihr Fahrzeug</translation>
    </message>
    <message>
        <source>Another rig</source>
        <translation>Weiteres Fahrzeug</translation>
    </message>
    <message numerus="yes">
        <source>%n answer(s) to put right, told above</source>
        <translation>
            <numerusform>%n Antwort zu berichtigen, oben genannt</numerusform>
            <numerusform>%n Antworten zu berichtigen, oben genannt</numerusform>
        </translation>
    </message>
    <message>
        <source>Draw it</source>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <source>or take part in a rig of another device</source>
        <translation>oder am Fahrzeug eines anderen Geräts teilnehmen</translation>
    </message>
    <message>
        <source>kind</source>
        <comment>step of a form</comment>
        <translation>Art</translation>
    </message>
    <message>
        <source>measures</source>
        <comment>step of a form</comment>
        <translation>Maße</translation>
    </message>
    <message>
        <source>fitted</source>
        <comment>step of a form</comment>
        <translation>Ausstattung</translation>
    </message>
    <message>
        <source>plates</source>
        <comment>step of a form</comment>
        <translation>Schilder</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Wählen, was am nächsten kommt.</translation>
    </message>
    <message>
        <source>Its sheet</source>
        <comment>of the rig</comment>
        <translation>Sein Blatt</translation>
    </message>
    <message>
        <source>The drawing and the points to look at are made from this: four short steps, of which two are enough to begin.</source>
        <translation>Daraus entstehen die Zeichnung und die Punkte zum Ansehen: vier kurze Schritte, von denen zwei für den Anfang genügen.</translation>
    </message>
    <message>
        <source>Look round an invented rig first</source>
        <translation>Erst ein erfundenes Fahrzeug ansehen</translation>
    </message>
    <message>
        <source>two years of walks, trips and findings, all made up</source>
        <translation>zwei Jahre Rundgänge, Fahrten und Befunde, alles erfunden</translation>
    </message>
    <message>
        <source>or bring a logbook back from a backup</source>
        <translation>oder ein Logbuch aus einer Sicherungskopie zurückholen</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>the rest can wait</source>
        <translation>der Rest kann warten</translation>
    </message>
    <message>
        <source>Next: how big</source>
        <translation>Weiter: wie groß</translation>
    </message>
    <message>
        <source>Next: what is fitted</source>
        <translation>Weiter: was vorhanden ist</translation>
    </message>
    <message>
        <source>Next: its plates</source>
        <translation>Weiter: seine Schilder</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>Sicherungskopie eines Logbuchs</translation>
    </message>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Logbücher (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>SetupKind</name>
    <message>
        <source>Where is it at home? Lamps, plugs and gas follow that.</source>
        <translation>Wo ist es zu Hause? Danach richten sich Leuchten, Stecker und Gas.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <comment>kind of rig</comment>
        <translation>Was ist es?</translation>
    </message>
    <message>
        <source>Measures in; typing takes either</source>
        <translation>Maße in; eingeben geht in beiden</translation>
    </message>
    <message>
        <source>metres, kPa, °C</source>
        <translation>Meter, kPa, °C</translation>
    </message>
    <message>
        <source>feet, psi, °F</source>
        <translation>Fuß, psi, °F</translation>
    </message>
    <message>
        <source>Your name, written beside each mark; may stay empty</source>
        <translation>Ihr Name, steht neben jedem Eintrag; kann leer bleiben</translation>
    </message>
</context>
<context>
    <name>SetupLists</name>
    <message>
        <source>travel trailer</source>
        <comment>kind of rig</comment>
        <translation>Wohnwagen</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <comment>kind of rig</comment>
        <translation>Sattelanhänger</translation>
    </message>
    <message>
        <source>folding or pop-up trailer</source>
        <comment>kind of rig</comment>
        <translation>Falt- oder Klappwohnwagen</translation>
    </message>
    <message>
        <source>teardrop</source>
        <comment>kind of rig</comment>
        <translation>Teardrop</translation>
    </message>
    <message>
        <source>truck camper</source>
        <comment>kind of rig</comment>
        <translation>Absetzkabine</translation>
    </message>
    <message>
        <source>motorhome</source>
        <comment>kind of rig</comment>
        <translation>Wohnmobil</translation>
    </message>
    <message>
        <source>camper van</source>
        <comment>kind of rig</comment>
        <translation>Kastenwagen</translation>
    </message>
    <message>
        <source>North America</source>
        <comment>practice</comment>
        <translation>Nordamerika</translation>
    </message>
    <message>
        <source>Europe</source>
        <comment>practice</comment>
        <translation>Europa</translation>
    </message>
    <message>
        <source>Australia and New Zealand</source>
        <comment>practice</comment>
        <translation>Australien und Neuseeland</translation>
    </message>
    <message>
        <source>other</source>
        <comment>practice</comment>
        <translation>andere</translation>
    </message>
    <message>
        <source>no</source>
        <comment>answer</comment>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes, by its maker&apos;s rating</source>
        <comment>answer</comment>
        <translation>ja, laut Hersteller</translation>
    </message>
    <message>
        <source>not known, counts as no</source>
        <comment>answer</comment>
        <translation>unbekannt, zählt als nein</translation>
    </message>
    <message>
        <source>rubber or plastic membrane</source>
        <comment>roof</comment>
        <translation>Gummi- oder Kunststoffmembran</translation>
    </message>
    <message>
        <source>moulded in one piece</source>
        <comment>roof</comment>
        <translation>in einem Stück geformt</translation>
    </message>
    <message>
        <source>metal sheet</source>
        <comment>roof</comment>
        <translation>Blech</translation>
    </message>
    <message>
        <source>canvas</source>
        <comment>roof</comment>
        <translation>Zeltstoff</translation>
    </message>
</context>
<context>
    <name>SetupMeasures</name>
    <message>
        <source>Width of the body</source>
        <translation>Aufbaubreite</translation>
    </message>
    <message>
        <source>Height of the body, floor to roof</source>
        <translation>Aufbauhöhe, Boden bis Dach</translation>
    </message>
    <message>
        <source>Floor above the ground</source>
        <translation>Boden über dem Grund</translation>
    </message>
    <message>
        <source>Coupling to the front of the body</source>
        <translation>Kupplung bis Aufbaufront</translation>
    </message>
    <message>
        <source>left empty: %1, as is usual</source>
        <comment>a measure</comment>
        <translation>leer: %1, wie üblich</translation>
    </message>
    <message>
        <source>What is left empty is drawn as such rigs usually are. Measure when there is time: all of it can be put right later.</source>
        <translation>Was leer bleibt, wird gezeichnet, wie solche Fahrzeuge meist sind. Messen, wenn Zeit ist: alles lässt sich später berichtigen.</translation>
    </message>
    <message>
        <source>Name</source>
        <comment>of the rig</comment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Length of the body, without the drawbar</source>
        <translation>Aufbaulänge, ohne Deichsel</translation>
    </message>
    <message>
        <source>such as 21 ft 6 in or 6.55 m</source>
        <translation>etwa 21 ft 6 in oder 6,55 m</translation>
    </message>
    <message>
        <source>such as 6.4 m or 21 ft</source>
        <translation>etwa 6,4 m oder 21 ft</translation>
    </message>
    <message>
        <source>Axles</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <source>more measures: width, height, floor, axles</source>
        <translation>weitere Maße: Breite, Höhe, Boden, Achsen</translation>
    </message>
    <message>
        <source>Axles, each aft of the front of the body</source>
        <translation>Achsen, jede hinter der Aufbaufront</translation>
    </message>
</context>
<context>
    <name>SetupPlates</name>
    <message>
        <source>such as 65 psi or 4.5 bar</source>
        <translation>etwa 65 psi oder 4,5 bar</translation>
    </message>
    <message>
        <source>such as 450 kPa, 4.5 bar or 65 psi</source>
        <translation>etwa 450 kPa, 4,5 bar oder 65 psi</translation>
    </message>
    <message>
        <source>such as 7,500 lb or 3400 kg</source>
        <translation>etwa 7500 lb oder 3400 kg</translation>
    </message>
    <message>
        <source>such as 2500 kg or 5,500 lb</source>
        <translation>etwa 2500 kg oder 5500 lb</translation>
    </message>
    <message>
        <source>1: pressure, cold, by the placard</source>
        <translation>1: Druck, kalt, laut Reifenschild</translation>
    </message>
    <message>
        <source>2: largest mass of the loaded rig</source>
        <translation>2: größte Masse des beladenen Fahrzeugs</translation>
    </message>
    <message>
        <source>1: size, as it stands</source>
        <translation>1: Größe, wie sie dasteht</translation>
    </message>
    <message>
        <source>such as 205/75 R14 105</source>
        <translation>etwa 205/75 R14 105</translation>
    </message>
    <message>
        <source>1: load range, a letter</source>
        <translation>1: Load Range, ein Buchstabe</translation>
    </message>
    <message>
        <source>such as D; many tires have none</source>
        <translation>etwa D; viele Reifen haben keinen</translation>
    </message>
    <message>
        <source>2: largest load, single</source>
        <translation>2: größte Last, Einzelrad</translation>
    </message>
    <message>
        <source>such as 2,040 lb</source>
        <translation>etwa 2040 lb</translation>
    </message>
    <message>
        <source>such as 925 kg</source>
        <translation>etwa 925 kg</translation>
    </message>
    <message>
        <source>2: at this pressure, cold</source>
        <translation>2: bei diesem Druck, kalt</translation>
    </message>
    <message>
        <source>The placard</source>
        <translation>Das Reifenschild</translation>
    </message>
    <message>
        <source>A plate or a sticker on the body: often near the front of the road side, in a door frame or a locker.</source>
        <translation>Ein Schild oder Aufkleber am Aufbau: oft vorn auf der Fahrbahnseite, in einem Türrahmen oder Staufach.</translation>
    </message>
    <message>
        <source>The tire&apos;s sidewall</source>
        <translation>Die Reifenflanke</translation>
    </message>
    <message>
        <source>3: the date code: the last four figures, week and year. 2326 is week 23 of 2026. The walk asks for it on each wheel.</source>
        <translation>3: der Datumscode: die letzten vier Ziffern, Woche und Jahr. 2326 ist Woche 23 von 2026. Der Rundgang fragt ihn an jedem Rad ab.</translation>
    </message>
    <message>
        <source>The wheel</source>
        <translation>Das Rad</translation>
    </message>
    <message>
        <source>Torque of the wheel nuts, by the maker</source>
        <translation>Anzugsmoment der Radmuttern, laut Hersteller</translation>
    </message>
    <message>
        <source>such as 100 lb·ft</source>
        <translation>etwa 100 lb·ft</translation>
    </message>
    <message>
        <source>such as 120 N·m</source>
        <translation>etwa 120 N·m</translation>
    </message>
    <message>
        <source>Only what stands on the rig counts as its maker&apos;s figure. Leave empty what you have not read; it can be added later.</source>
        <translation>Nur was am Fahrzeug steht, zählt als Herstellerangabe. Leer lassen, was nicht abgelesen ist; es lässt sich später nachtragen.</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>Share %1</source>
        <comment>rig</comment>
        <translation>%1 teilen</translation>
    </message>
    <message>
        <source>From then on what is written about this rig goes to every store you exchange with: signed by the device, and sealed so that only enrolled devices read it.</source>
        <translation>Von da an geht, was über dieses Fahrzeug geschrieben wird, an jede Ablage, mit der Sie austauschen: vom Gerät signiert und so versiegelt, dass nur aufgenommene Geräte es lesen.</translation>
    </message>
    <message>
        <source>What the other device may do</source>
        <translation>Was das andere Gerät darf</translation>
    </message>
    <message>
        <source>Until, a date such as 2027-03-31; may stay empty</source>
        <translation>Bis, ein Datum wie 2027-03-31; kann leer bleiben</translation>
    </message>
    <message>
        <source>A hint to that device only. What ends its access is revoking it.</source>
        <translation>Nur ein Hinweis an das Gerät. Seinen Zugang beendet erst das Widerrufen.</translation>
    </message>
    <message>
        <source>Show the code</source>
        <translation>Code zeigen</translation>
    </message>
    <message>
        <source>Stands until %1.</source>
        <comment>time</comment>
        <translation>Gilt bis %1.</translation>
    </message>
    <message>
        <source>Take the answer</source>
        <translation>Antwort nehmen</translation>
    </message>
    <message>
        <source>Other digits there: somebody stands between. Then enroll nobody, and start again.</source>
        <translation>Dort andere Ziffern: jemand steht dazwischen. Dann niemanden aufnehmen und neu beginnen.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Asks to be</source>
        <translation>Will sein</translation>
    </message>
    <message>
        <source>Will be</source>
        <translation>Wird sein</translation>
    </message>
    <message>
        <source>The same digits: enroll it</source>
        <translation>Dieselben Ziffern: aufnehmen</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2.</source>
        <comment>device, role</comment>
        <translation>%1 ist aufgenommen als %2.</translation>
    </message>
    <message>
        <source>Exchange with a store now. The other device then finds the rig at the same store.</source>
        <translation>Jetzt mit einer Ablage austauschen. Das andere Gerät findet das Fahrzeug dann bei derselben Ablage.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>Zu den Ablagen</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>neu beginnen</translation>
    </message>
    <message>
        <source>Show it to nobody but the person who gets it. On the other device: exchange, take part in a rig. There, read the picture by camera, or type or paste the words.</source>
        <translation>Nur der Person zeigen, die es bekommt. Am anderen Gerät: Austausch, an einem Fahrzeug teilnehmen. Dort das Bild mit der Kamera lesen oder die Wörter eingeben oder einfügen.</translation>
    </message>
    <message>
        <source>What the other device shows now, as words</source>
        <translation>Was das andere Gerät jetzt zeigt, als Wörter</translation>
    </message>
</context>
<context>
    <name>Shift</name>
    <message>
        <source>%1 months</source>
        <comment>with one decimal</comment>
        <translation>%1 Monate</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <comment>months</comment>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 later</source>
        <comment>months</comment>
        <translation>%1 später</translation>
    </message>
    <message>
        <source>shaking on the road</source>
        <translation>Erschütterung auf der Straße</translation>
    </message>
    <message>
        <source>how far you drive</source>
        <translation>wie weit Sie fahren</translation>
    </message>
    <message>
        <source>earlier looks and mends</source>
        <translation>frühere Durchsichten und Reparaturen</translation>
    </message>
    <message>
        <source>a limit that nothing may lengthen</source>
        <translation>eine Grenze, die nichts verlängern darf</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, causes</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>The %n day(s) since %1 aged it like %2.</source>
        <translation>
            <numerusform>Der %n Tag seit %1 ließ es altern wie %2.</numerusform>
            <numerusform>Die %n Tage seit %1 ließen es altern wie %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SignPad</name>
    <message>
        <source>sign here: %1</source>
        <comment>who signs</comment>
        <translation>hier unterschreiben: %1</translation>
    </message>
    <message>
        <source>Signed</source>
        <comment>end of signing</comment>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>begin again</source>
        <comment>signing</comment>
        <translation>noch einmal</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>signing</comment>
        <translation>jetzt nicht</translation>
    </message>
</context>
<context>
    <name>SixDigits</name>
    <message>
        <source>Six digits, on both devices</source>
        <translation>Sechs Ziffern, auf beiden Geräten</translation>
    </message>
    <message>
        <source>Six digits: %1</source>
        <comment>code of a meeting</comment>
        <translation>Sechs Ziffern: %1</translation>
    </message>
</context>
<context>
    <name>StandDrawing</name>
    <message>
        <source>stand inside, here</source>
        <translation>innen stehen, hier</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>von der Leiter oder mit Kamera an der Stange</translation>
    </message>
    <message>
        <source>look from the edges</source>
        <translation>von den Rändern schauen</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>hier stehen</translation>
    </message>
</context>
<context>
    <name>StarPicture</name>
    <message>
        <source>All rounds are through.</source>
        <translation>Alle Runden sind durch.</translation>
    </message>
    <message>
        <source>Last round, wheel on the ground: to the maker&apos;s figure</source>
        <translation>Letzte Runde, Rad am Boden: auf die Herstellerangabe</translation>
    </message>
    <message>
        <source>Second round, wheel on the ground: to about two thirds</source>
        <translation>Zweite Runde, Rad am Boden: auf etwa zwei Drittel</translation>
    </message>
    <message>
        <source>First round, wheel off the ground: to about a third of the maker&apos;s figure</source>
        <translation>Erste Runde, Rad in der Luft: auf etwa ein Drittel der Herstellerangabe</translation>
    </message>
    <message>
        <source>nut %1, %2 of %3</source>
        <comment>which nut, how many</comment>
        <translation>Mutter %1, %2 von %3</translation>
    </message>
    <message>
        <source>%1; press for the next</source>
        <comment>nut 4, 2 of 6</comment>
        <translation>%1; drücken für die nächste</translation>
    </message>
    <message>
        <source>done</source>
        <comment>all nuts of a wheel</comment>
        <translation>fertig</translation>
    </message>
    <message>
        <source>Filled: the next nut. Heavy line: to the one after. Double ring: through in this round. Numbered clockwise from the top.</source>
        <translation>Gefüllt: die nächste Mutter. Dicke Linie: zur übernächsten. Doppelring: in dieser Runde durch. Nummern im Uhrzeigersinn von oben.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <comment>with the first nut</comment>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <source>Tightened: the next</source>
        <comment>a nut</comment>
        <translation>Angezogen: die nächste</translation>
    </message>
    <message>
        <source>one nut back</source>
        <translation>eine Mutter zurück</translation>
    </message>
</context>
<context>
    <name>StartSheet</name>
    <message>
        <source>Start a walk</source>
        <translation>Rundgang beginnen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>kind of walk, what it is for</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>most likely the one for today</source>
        <translation>wahrscheinlich der für heute</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n minute(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, etwa %n Minute</numerusform>
            <numerusform>, etwa %n Minuten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n hour(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, etwa %n Stunde</numerusform>
            <numerusform>, etwa %n Stunden</numerusform>
        </translation>
    </message>
    <message>
        <source>all of it</source>
        <comment>time for a walk</comment>
        <translation>alles</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <comment>time for a walk</comment>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>Time there is</source>
        <translation>Verfügbare Zeit</translation>
    </message>
</context>
<context>
    <name>StateFigures</name>
    <message>
        <source>under %1 %</source>
        <comment>chance</comment>
        <translation>unter %1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>chance or share</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Nothing was found there at the last look.</source>
        <translation>Bei der letzten Durchsicht wurde dort nichts gefunden.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Noch niemand hat es angesehen.</translation>
    </message>
    <message>
        <source>The chance of a defect at the next look is taken as %1, between %2 and %3.</source>
        <translation>Die Wahrscheinlichkeit eines Mangels bei der nächsten Durchsicht wird mit %1 angenommen, zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>The scale: 50 is a chance of 1 in 100 of the worst kind of harm before the next look; 25 more is ten times as much.</source>
        <translation>Die Skala: 50 ist eine Wahrscheinlichkeit von 1 von 100 für die schlimmste Art Schaden vor der nächsten Durchsicht; 25 mehr ist das Zehnfache.</translation>
    </message>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <comment>point, concern</comment>
        <translation>%1: %2, zwischen %3 und %4</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more may be as bad</source>
        <translation>
            <numerusform>%1; %n weiterer kann so schlimm sein</numerusform>
            <numerusform>%1; %n weitere können so schlimm sein</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tied with %2 more</source>
        <comment>concern, number</comment>
        <translation>%1, gleichauf mit %2 weiteren</translation>
    </message>
    <message>
        <source>Worst item, concern 0 to 100</source>
        <translation>Schlimmster Punkt, Bedenken 0 bis 100</translation>
    </message>
    <message>
        <source>%1, between %2 and %3</source>
        <comment>chance</comment>
        <translation>%1, zwischen %2 und %3</translation>
    </message>
    <message>
        <source>Chance that one serious item fails before its next look</source>
        <translation>Wahrscheinlichkeit, dass ein schwerwiegender Punkt vor seiner nächsten Durchsicht versagt</translation>
    </message>
    <message numerus="yes">
        <source>Of %n item(s) on which life, limb or the rig hangs.</source>
        <translation>
            <numerusform>Von %n Punkt, an dem Leib, Leben oder das Fahrzeug hängt.</numerusform>
            <numerusform>Von %n Punkten, an denen Leib, Leben oder das Fahrzeug hängt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each counts with its own chance, as if none knew of another; this is the chance that at least one of them fails.</source>
        <translation>Jeder zählt mit seiner eigenen Wahrscheinlichkeit, als wüsste keiner vom anderen; dies ist die, dass mindestens einer versagt.</translation>
    </message>
    <message>
        <source>What nobody has looked at counts with the chance of a rig about which nothing is known.</source>
        <translation>Was niemand angesehen hat, zählt mit der Wahrscheinlichkeit eines Fahrzeugs, über das nichts bekannt ist.</translation>
    </message>
    <message>
        <source>Looked at, by weight</source>
        <translation>Angesehen, nach Gewicht</translation>
    </message>
    <message>
        <source>%1 of what weighs</source>
        <comment>share</comment>
        <translation>%1 dessen, was wiegt</translation>
    </message>
    <message>
        <source>A point weighs what hangs on it times how likely it would be at fault if nobody ever looked.</source>
        <translation>Ein Punkt wiegt, was an ihm hängt, mal wie wahrscheinlich er einen Mangel hätte, wenn nie jemand hinsähe.</translation>
    </message>
    <message>
        <source>A look counts until the point is due again.</source>
        <translation>Eine Durchsicht zählt, bis der Punkt wieder fällig ist.</translation>
    </message>
    <message>
        <source>over %1 %</source>
        <comment>chance</comment>
        <translation>über %1 %</translation>
    </message>
</context>
<context>
    <name>StatePage</name>
    <message>
        <source>How it stands, and why</source>
        <translation>Wie es steht, und warum</translation>
    </message>
    <message>
        <source>Hidden, though the road or fire hangs on it</source>
        <translation>Verborgen, obwohl Straße oder Feuer daran hängt</translation>
    </message>
</context>
<context>
    <name>StoreForm</name>
    <message>
        <source>Its folder</source>
        <translation>Sein Ordner</translation>
    </message>
    <message>
        <source>The file, with its folder</source>
        <translation>Die Datei, mit ihrem Ordner</translation>
    </message>
    <message>
        <source>Address, https://…</source>
        <translation>Adresse, https://…</translation>
    </message>
    <message>
        <source>What devices meet at</source>
        <translation>Wo Geräte sich treffen</translation>
    </message>
    <message>
        <source>a folder, stick or drive</source>
        <translation>ein Ordner, Stick oder Laufwerk</translation>
    </message>
    <message>
        <source>a file to hand over</source>
        <translation>eine Datei zum Weitergeben</translation>
    </message>
    <message>
        <source>a WebDAV address</source>
        <translation>eine WebDAV-Adresse</translation>
    </message>
    <message>
        <source>Name of the store</source>
        <translation>Name der Ablage</translation>
    </message>
    <message>
        <source>letters, digits and hyphens, such as red-stick</source>
        <translation>Buchstaben, Ziffern und Bindestriche, etwa roter-stick</translation>
    </message>
    <message>
        <source>choose the folder</source>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>User, if it asks for one</source>
        <translation>Benutzer, wenn verlangt</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>Kept on this device, for this user of it alone; not locked.</source>
        <translation>Auf diesem Gerät abgelegt, nur für diesen Benutzer; nicht verschlossen.</translation>
    </message>
    <message>
        <source>Add the store</source>
        <translation>Ablage hinzufügen</translation>
    </message>
    <message>
        <source>leave it</source>
        <comment>adds no store</comment>
        <translation>lassen</translation>
    </message>
    <message>
        <source>Folder of the store</source>
        <translation>Ordner der Ablage</translation>
    </message>
    <message>
        <source>Certificate file of its authority; may stay empty</source>
        <translation>Zertifikatsdatei ihrer Zertifizierungsstelle; kann leer bleiben</translation>
    </message>
    <message>
        <source>Only for a server of your own whose certificate this device does not know. Then no other authority is believed for it.</source>
        <translation>Nur für einen eigenen Server, dessen Zertifikat dieses Gerät nicht kennt. Dann wird für ihn keiner anderen Stelle geglaubt.</translation>
    </message>
    <message>
        <source>choose the certificate file</source>
        <translation>Zertifikatsdatei wählen</translation>
    </message>
    <message>
        <source>Certificate of the authority</source>
        <translation>Zertifikat der Stelle</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt)</source>
        <translation>Zertifikate (*.pem *.crt)</translation>
    </message>
</context>
<context>
    <name>StoreRow</name>
    <message>
        <source>%1: %2</source>
        <comment>kind of store, its place</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Jetzt austauschen</translation>
    </message>
    <message>
        <source>Exchange now with %1</source>
        <comment>store</comment>
        <translation>Jetzt mit %1 austauschen</translation>
    </message>
    <message>
        <source>remove</source>
        <comment>a store from the list</comment>
        <translation>entfernen</translation>
    </message>
    <message>
        <source>remove %1 from the list; what lies there stays</source>
        <comment>store</comment>
        <translation>%1 aus der Liste entfernen; was dort liegt, bleibt</translation>
    </message>
</context>
<context>
    <name>SuppliesPage</name>
    <message>
        <source>open findings and what is due</source>
        <translation>offene Befunde und Fälliges</translation>
    </message>
    <message numerus="yes">
        <source>and what falls due in %n day(s)</source>
        <translation>
            <numerusform>und was in %n Tag fällig wird</numerusform>
            <numerusform>und was in %n Tagen fällig wird</numerusform>
        </translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>Nothing found or due uses anything up.</source>
        <translation>Kein Befund und nichts Fälliges verbraucht etwas.</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>count it</source>
        <comment>what is on hand</comment>
        <translation>zählen</translation>
    </message>
</context>
<context>
    <name>Sync</name>
    <message>
        <source>writes everything, enrolls and revokes devices</source>
        <translation>schreibt alles, nimmt Geräte auf und widerruft sie</translation>
    </message>
    <message>
        <source>walks, marks and mends; decides no acceptance and no points</source>
        <translation>Rundgänge, Einträge und Reparaturen; entscheidet kein Hinnehmen und keine Punkte</translation>
    </message>
    <message>
        <source>walks, reports and mends; licensed work only with a certificate number</source>
        <translation>Rundgänge, Berichte und Reparaturen; Facharbeit nur mit Bescheinigungsnummer</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>liest alles, schreibt nichts</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of the store are damaged and were left out.</source>
        <translation>
            <numerusform>%n Datei der Ablage ist beschädigt und wurde ausgelassen.</numerusform>
            <numerusform>%n Dateien der Ablage sind beschädigt und wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) are known to be missing: another device still has to bring them.</source>
        <translation>
            <numerusform>%n Datei fehlt bekanntermaßen: ein anderes Gerät muss sie noch bringen.</numerusform>
            <numerusform>%n Dateien fehlen bekanntermaßen: ein anderes Gerät muss sie noch bringen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) cannot be opened here yet: they are kept.</source>
        <translation>
            <numerusform>%n Datei lässt sich hier noch nicht öffnen: sie bleibt aufgehoben.</numerusform>
            <numerusform>%n Dateien lassen sich hier noch nicht öffnen: sie bleiben aufgehoben.</numerusform>
        </translation>
    </message>
    <message>
        <source>A copy of this logbook went on elsewhere: both ways are kept.</source>
        <translation>Eine Kopie dieses Logbuchs lief woanders weiter: beide Wege bleiben erhalten.</translation>
    </message>
    <message>
        <source>owner</source>
        <comment>role of a device</comment>
        <translation>Halter</translation>
    </message>
    <message>
        <source>helper</source>
        <comment>role of a device</comment>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>technician</source>
        <comment>role of a device</comment>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>viewer</source>
        <comment>role of a device</comment>
        <translation>Leser</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait to be sent.</source>
        <translation>
            <numerusform>%n Eintrag wartet auf das Senden.</numerusform>
            <numerusform>%n Einträge warten auf das Senden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) are still on another device.</source>
        <translation>
            <numerusform>%n Foto ist noch auf einem anderen Gerät.</numerusform>
            <numerusform>%n Fotos sind noch auf einem anderen Gerät.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) were written differently by two people.</source>
        <translation>
            <numerusform>%n Sache wurde von zwei Personen verschieden eingetragen.</numerusform>
            <numerusform>%n Sachen wurden von zwei Personen verschieden eingetragen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) were set aside.</source>
        <translation>
            <numerusform>%n Eintrag wurde beiseitegelegt.</numerusform>
            <numerusform>%n Einträge wurden beiseitegelegt.</numerusform>
        </translation>
    </message>
    <message>
        <source>A rig shared with this device has not arrived yet: exchange with a store that has it.</source>
        <translation>Ein mit diesem Gerät geteiltes Fahrzeug ist noch nicht angekommen: mit einer Ablage austauschen, die es hat.</translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s)</source>
        <comment>mark beside the word Logbook</comment>
        <translation>
            <numerusform>%n wartet</numerusform>
            <numerusform>%n warten</numerusform>
        </translation>
    </message>
    <message>
        <source>a rig waits</source>
        <comment>mark beside the word Logbook</comment>
        <translation>ein Fahrzeug wartet</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) sent</source>
        <translation>
            <numerusform>%n Eintrag gesendet</numerusform>
            <numerusform>%n Einträge gesendet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n received</source>
        <comment>entries</comment>
        <translation>
            <numerusform>%n erhalten</numerusform>
            <numerusform>%n erhalten</numerusform>
        </translation>
    </message>
    <message>
        <source>Both have the same entries.</source>
        <translation>Beide haben dieselben Einträge.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>entries sent, received</comment>
        <translation>%1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) sent.</source>
        <translation>
            <numerusform>%n Foto gesendet.</numerusform>
            <numerusform>%n Fotos gesendet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) received.</source>
        <translation>
            <numerusform>%n Foto erhalten.</numerusform>
            <numerusform>%n Fotos erhalten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n small picture(s) of photos received.</source>
        <translation>
            <numerusform>%n kleines Bild von Fotos erhalten.</numerusform>
            <numerusform>%n kleine Bilder von Fotos erhalten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of other devices were carried on.</source>
        <translation>
            <numerusform>%n Datei anderer Geräte wurde weitergetragen.</numerusform>
            <numerusform>%n Dateien anderer Geräte wurden weitergetragen.</numerusform>
        </translation>
    </message>
    <message>
        <source>looking at the store …</source>
        <translation>Ablage wird angesehen …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>done, all</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>photos: %1</source>
        <comment>done of all</comment>
        <translation>Fotos: %1</translation>
    </message>
    <message>
        <source>files of entries: %1</source>
        <comment>done of all</comment>
        <translation>Dateien mit Einträgen: %1</translation>
    </message>
    <message>
        <source>records of devices: %1</source>
        <comment>done of all</comment>
        <translation>Aufzeichnungen von Geräten: %1</translation>
    </message>
    <message>
        <source>last exchange %1</source>
        <comment>date and time</comment>
        <translation>letzter Austausch %1</translation>
    </message>
    <message>
        <source>no exchange yet</source>
        <translation>noch kein Austausch</translation>
    </message>
    <message>
        <source>nothing new since</source>
        <translation>seither nichts Neues</translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(ies) since</source>
        <translation>
            <numerusform>%n neuer Eintrag seither</numerusform>
            <numerusform>%n neue Einträge seither</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) to leave there</source>
        <translation>
            <numerusform>%n Eintrag dort zu hinterlassen</numerusform>
            <numerusform>%n Einträge dort zu hinterlassen</numerusform>
        </translation>
    </message>
    <message>
        <source>folder</source>
        <comment>kind of store</comment>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>WebDAV address</source>
        <comment>kind of store</comment>
        <translation>WebDAV-Adresse</translation>
    </message>
    <message>
        <source>file to hand over</source>
        <comment>kind of store</comment>
        <translation>Datei zum Weitergeben</translation>
    </message>
    <message>
        <source>%1 (this device)</source>
        <comment>name of a device</comment>
        <translation>%1 (dieses Gerät)</translation>
    </message>
    <message>
        <source>revoked</source>
        <comment>a device</comment>
        <translation>widerrufen</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date</comment>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <comment>date</comment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>This rig&apos;s logbook is on this device only.</source>
        <translation>Das Logbuch dieses Fahrzeugs ist nur auf diesem Gerät.</translation>
    </message>
    <message>
        <source>This device was revoked: what is written here stays here.</source>
        <translation>Dieses Gerät wurde widerrufen: was hier geschrieben wird, bleibt hier.</translation>
    </message>
    <message>
        <source>This device waits to be enrolled by an owner.</source>
        <translation>Dieses Gerät wartet darauf, von einem Halter aufgenommen zu werden.</translation>
    </message>
    <message>
        <source>This device is enrolled as %1.</source>
        <comment>role</comment>
        <translation>Dieses Gerät ist aufgenommen als %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n original(s) come with the next exchange with a store that has them.</source>
        <translation>
            <numerusform>%n Original kommt mit dem nächsten Austausch mit einer Ablage, die es hat.</numerusform>
            <numerusform>%n Originale kommen mit dem nächsten Austausch mit einer Ablage, die sie hat.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SyncFault</name>
    <message>
        <source>The store is not there: %1</source>
        <translation>Die Ablage ist nicht da: %1</translation>
    </message>
    <message>
        <source>Put the stick in, or connect the drive, and exchange once more.</source>
        <translation>Stick einstecken oder Laufwerk verbinden und neu austauschen.</translation>
    </message>
    <message>
        <source>The store holds another file of that name: %1</source>
        <translation>Die Ablage hat eine andere Datei dieses Namens: %1</translation>
    </message>
    <message>
        <source>Nothing was overwritten. Look at the store, or use another one.</source>
        <translation>Nichts wurde überschrieben. Die Ablage ansehen oder eine andere nehmen.</translation>
    </message>
    <message>
        <source>The store cannot be reached: %1</source>
        <translation>Die Ablage ist nicht erreichbar: %1</translation>
    </message>
    <message>
        <source>Nothing is lost. Exchange again where there is a network.</source>
        <translation>Nichts ist verloren. Neu austauschen, wo es ein Netz gibt.</translation>
    </message>
    <message>
        <source>The store or the disk refused: %1</source>
        <translation>Die Ablage oder der Datenträger lehnte ab: %1</translation>
    </message>
    <message>
        <source>Nothing is lost. See that it is there, has room and may be written to, then exchange again.</source>
        <translation>Nichts ist verloren. Nachsehen, ob sie da ist, Platz hat und beschrieben werden darf, dann neu austauschen.</translation>
    </message>
    <message>
        <source>A word is not as it was shown: %1</source>
        <translation>Ein Wort ist nicht, wie es gezeigt wurde: %1</translation>
    </message>
    <message>
        <source>Look at this word again.</source>
        <translation>Dieses Wort noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Words are missing, or are of two sets.</source>
        <translation>Wörter fehlen oder stammen aus zwei Sätzen.</translation>
    </message>
    <message>
        <source>Type or paste all the words as they are shown.</source>
        <translation>Alle Wörter eingeben oder einfügen, wie sie gezeigt werden.</translation>
    </message>
    <message>
        <source>These words are no offer to share a rig.</source>
        <translation>Diese Wörter sind kein Angebot, ein Fahrzeug zu teilen.</translation>
    </message>
    <message>
        <source>Type the words of the owner&apos;s device.</source>
        <translation>Die Wörter vom Gerät des Halters eingeben.</translation>
    </message>
    <message>
        <source>These words are no answer to the code shown here.</source>
        <translation>Diese Wörter sind keine Antwort auf den hier gezeigten Code.</translation>
    </message>
    <message>
        <source>Show the code again, and answer it on the other device once more.</source>
        <translation>Den Code neu zeigen und am anderen Gerät noch einmal beantworten.</translation>
    </message>
    <message>
        <source>The code stood ten minutes and is over, or a clock is wrong.</source>
        <translation>Der Code galt zehn Minuten und ist vorbei, oder eine Uhr geht falsch.</translation>
    </message>
    <message>
        <source>Show a new code.</source>
        <translation>Einen neuen Code zeigen.</translation>
    </message>
    <message>
        <source>Only an owner&apos;s device may do this.</source>
        <translation>Nur das Gerät eines Halters darf das.</translation>
    </message>
    <message>
        <source>Do it on an owner&apos;s device.</source>
        <translation>Auf dem Gerät eines Halters tun.</translation>
    </message>
    <message>
        <source>This is the last owner&apos;s device.</source>
        <translation>Dies ist das letzte Gerät eines Halters.</translation>
    </message>
    <message>
        <source>Enroll another owner first.</source>
        <translation>Erst einen weiteren Halter aufnehmen.</translation>
    </message>
    <message>
        <source>This logbook shares that rig already, with other devices.</source>
        <translation>Dieses Logbuch teilt das Fahrzeug schon, mit anderen Geräten.</translation>
    </message>
    <message>
        <source>Use the sharing that is there, or a logbook of its own.</source>
        <translation>Die vorhandene Teilung nehmen oder ein eigenes Logbuch.</translation>
    </message>
    <message>
        <source>This was settled meanwhile.</source>
        <translation>Das hat sich inzwischen erledigt.</translation>
    </message>
    <message>
        <source>Nothing has to be done.</source>
        <translation>Nichts zu tun.</translation>
    </message>
    <message>
        <source>There is a store named %1 already.</source>
        <translation>Eine Ablage namens %1 gibt es schon.</translation>
    </message>
    <message>
        <source>Give it another name.</source>
        <translation>Einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>The store needs a name of letters, digits and hyphens.</source>
        <translation>Die Ablage braucht einen Namen aus Buchstaben, Ziffern und Bindestrichen.</translation>
    </message>
    <message>
        <source>Type one.</source>
        <translation>Einen eingeben.</translation>
    </message>
    <message>
        <source>This address cannot be used.</source>
        <translation>Diese Adresse lässt sich nicht nutzen.</translation>
    </message>
    <message>
        <source>Write it as https://host/folder/, without a user or a password in it.</source>
        <translation>So schreiben: https://host/ordner/, ohne Benutzer oder Passwort darin.</translation>
    </message>
    <message>
        <source>This is no date: %1</source>
        <translation>Das ist kein Datum: %1</translation>
    </message>
    <message>
        <source>Write it as 2027-03-31.</source>
        <translation>So schreiben: 2027-03-31.</translation>
    </message>
    <message>
        <source>These words are no key on paper.</source>
        <translation>Diese Wörter sind kein Schlüssel auf Papier.</translation>
    </message>
    <message>
        <source>Type the 24 words of the paper.</source>
        <translation>Die 24 Wörter des Papiers eingeben.</translation>
    </message>
    <message>
        <source>This store has no rig of that key, or one with another mark: %1</source>
        <translation>Diese Ablage hat kein Fahrzeug zu diesem Schlüssel, oder eines mit anderem Kennzeichen: %1</translation>
    </message>
    <message>
        <source>Exchange once from a device that has the rig, or take another store. A rig with another mark was made up by somebody.</source>
        <translation>Einmal von einem Gerät mit dem Fahrzeug austauschen oder eine andere Ablage nehmen. Ein Fahrzeug mit anderem Kennzeichen hat jemand erfunden.</translation>
    </message>
    <message>
        <source>Several rigs at this store name that key an owner: %1</source>
        <translation>Mehrere Fahrzeuge dieser Ablage nennen diesen Schlüssel als Halter: %1</translation>
    </message>
    <message>
        <source>Type the mark that stands beside the words.</source>
        <translation>Das Kennzeichen eingeben, das neben den Wörtern steht.</translation>
    </message>
    <message>
        <source>No code was found in this picture.</source>
        <translation>In diesem Bild wurde kein Code gefunden.</translation>
    </message>
    <message>
        <source>Take it straight on and near, without glare; or type the words.</source>
        <translation>Gerade und nah aufnehmen, ohne Spiegelung; oder die Wörter eingeben.</translation>
    </message>
    <message>
        <source>This file is no picture that can be read: %1</source>
        <translation>Diese Datei ist kein lesbares Bild: %1</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG picture.</source>
        <translation>Ein JPEG- oder PNG-Bild wählen.</translation>
    </message>
</context>
<context>
    <name>SyncPage</name>
    <message>
        <source>Exchange</source>
        <comment>with other devices</comment>
        <translation>Austausch</translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Nichts wartet.</translation>
    </message>
    <message>
        <source>Look at what differs</source>
        <translation>Ansehen, was abweicht</translation>
    </message>
    <message>
        <source>both versions are kept until a person chooses</source>
        <translation>beide Fassungen bleiben, bis jemand wählt</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Ablagen</translation>
    </message>
    <message>
        <source>No store yet. A store is a place where devices leave what is new for each other: a stick, a shared folder, a drive.</source>
        <translation>Noch keine Ablage. Eine Ablage ist ein Ort, an dem Geräte Neues füreinander hinterlassen: ein Stick, ein geteilter Ordner, ein Laufwerk.</translation>
    </message>
    <message>
        <source>add a store</source>
        <translation>Ablage hinzufügen</translation>
    </message>
    <message>
        <source>Devices of this rig</source>
        <translation>Geräte dieses Fahrzeugs</translation>
    </message>
    <message>
        <source>Share with one more device</source>
        <translation>Mit einem weiteren Gerät teilen</translation>
    </message>
    <message>
        <source>Share this rig</source>
        <translation>Dieses Fahrzeug teilen</translation>
    </message>
    <message>
        <source>take part in a rig of another device</source>
        <translation>am Fahrzeug eines anderen Geräts teilnehmen</translation>
    </message>
    <message>
        <source>What goes into a store is sealed: who finds a stick reads nothing of it. The logbook on this device is not locked beyond what the device itself does.</source>
        <translation>Was in eine Ablage geht, ist versiegelt: wer einen Stick findet, liest nichts davon. Das Logbuch auf diesem Gerät ist nur so verschlossen, wie das Gerät selbst es tut.</translation>
    </message>
    <message>
        <source>ask for the photos in full</source>
        <translation>die ganzen Fotos anfordern</translation>
    </message>
    <message>
        <source>ask for the originals of photos that are on other devices</source>
        <translation>die Originale der Fotos anfordern, die auf anderen Geräten sind</translation>
    </message>
    <message>
        <source>Photos in full, when exchanging</source>
        <translation>Ganze Fotos beim Austausch</translation>
    </message>
    <message>
        <source>those asked for</source>
        <comment>photos</comment>
        <translation>die angeforderten</translation>
    </message>
    <message>
        <source>all of them: on Wi-Fi</source>
        <comment>photos</comment>
        <translation>alle: im WLAN</translation>
    </message>
    <message>
        <source>Entries and small pictures of photos always come.</source>
        <translation>Einträge und kleine Bilder der Fotos kommen immer.</translation>
    </message>
    <message>
        <source>make a key on paper</source>
        <translation>einen Schlüssel auf Papier machen</translation>
    </message>
</context>
<context>
    <name>TapeRow</name>
    <message>
        <source>%1: %2</source>
        <comment>line of the tape, what was written</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Thing</name>
    <message>
        <source>The rig</source>
        <translation>Das Fahrzeug</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Look at a finding</source>
        <translation>Durchsicht eines Befunds</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Aufenthalt</translation>
    </message>
    <message>
        <source>Weather record</source>
        <translation>Wetteraufzeichnung</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Vorfall</translation>
    </message>
    <message>
        <source>Own point</source>
        <translation>Eigener Punkt</translation>
    </message>
    <message>
        <source>Hidden point</source>
        <translation>Verborgener Punkt</translation>
    </message>
    <message>
        <source>Own interval</source>
        <translation>Eigenes Intervall</translation>
    </message>
    <message>
        <source>Drawing on a photo</source>
        <translation>Zeichnung auf einem Foto</translation>
    </message>
    <message>
        <source>Supply on hand</source>
        <translation>Vorhandenes Material</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Hinnehmen</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>how it was looked at</source>
        <translation>wie es angesehen wurde</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>was getan wurde</translation>
    </message>
    <message>
        <source>what was done, in words</source>
        <translation>was getan wurde, in Worten</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>findings it closes</source>
        <translation>Befunde, die sie schließt</translation>
    </message>
    <message>
        <source>when it was finished</source>
        <translation>wann beendet</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>Ausstattung</translation>
    </message>
    <message>
        <source>measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>ratings</source>
        <translation>zulässige Werte</translation>
    </message>
    <message>
        <source>tires</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>wheels</source>
        <translation>Räder</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>lines drawn</source>
        <translation>gezeichnete Linien</translation>
    </message>
    <message>
        <source>written by a device that does not belong to this rig</source>
        <translation>geschrieben von einem Gerät, das nicht zu diesem Fahrzeug gehört</translation>
    </message>
    <message>
        <source>written after its device was revoked</source>
        <translation>geschrieben, nachdem sein Gerät widerrufen wurde</translation>
    </message>
    <message>
        <source>carried for another device by one that is no owner</source>
        <translation>für ein anderes Gerät überbracht von einem, das keinem Halter gehört</translation>
    </message>
    <message>
        <source>it belongs to another rig</source>
        <translation>es gehört zu einem anderen Fahrzeug</translation>
    </message>
    <message>
        <source>a viewer writes nothing</source>
        <translation>ein Leser schreibt nichts</translation>
    </message>
    <message>
        <source>only an owner decides this</source>
        <translation>das entscheidet nur ein Halter</translation>
    </message>
    <message>
        <source>a technician does not change the rig</source>
        <translation>ein Techniker ändert das Fahrzeug nicht</translation>
    </message>
    <message>
        <source>a mend of what is licensed needs a certificate number</source>
        <translation>eine Reparatur durch Fachkräfte braucht eine Bescheinigungsnummer</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number, unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>reading, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>taken away</source>
        <comment>value of a field</comment>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>value of a field</comment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <comment>value of a field</comment>
        <translation>nein</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>value of a field</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>field, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>thing, what is known of it</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>TirePicture</name>
    <message>
        <source>picture of a tire&apos;s sidewall: 1 size, 2 largest load and pressure, 3 date code</source>
        <translation>Bild einer Reifenflanke: 1 Größe, 2 größte Last und Druck, 3 Datumscode</translation>
    </message>
</context>
<context>
    <name>TrackSketch</name>
    <message>
        <source>sketch of the track</source>
        <translation>Skizze der Spur</translation>
    </message>
</context>
<context>
    <name>Trend</name>
    <message>
        <source>%1, %2</source>
        <comment>reading, place</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 less a year.</source>
        <translation>%1 weniger im Jahr.</translation>
    </message>
    <message>
        <source>%1 more a year.</source>
        <translation>%1 mehr im Jahr.</translation>
    </message>
    <message>
        <source>Likely to meet the limit about %1, from %2 to %3.</source>
        <translation>Erreicht den Grenzwert wahrscheinlich um %1, von %2 bis %3.</translation>
    </message>
    <message>
        <source>There is no limit to hold it against.</source>
        <translation>Es gibt keinen Grenzwert zum Vergleich.</translation>
    </message>
    <message>
        <source>Too few readings for a line: three are wanted.</source>
        <translation>Zu wenige Messwerte für eine Linie: drei sind nötig.</translation>
    </message>
    <message>
        <source>The last reading is past the limit.</source>
        <translation>Der letzte Messwert liegt über den Grenzwert hinaus.</translation>
    </message>
    <message>
        <source>It does not move toward the limit.</source>
        <translation>Es läuft nicht auf den Grenzwert zu.</translation>
    </message>
    <message>
        <source>The limit is more than thirty years off by these readings; that says little.</source>
        <translation>Der Grenzwert liegt nach diesen Messwerten über dreißig Jahre entfernt; das sagt wenig.</translation>
    </message>
    <message>
        <source>It grew back. Was it replaced? Write the mend down.</source>
        <translation>Es ist wieder gewachsen. Wurde es ersetzt? Die Reparatur eintragen.</translation>
    </message>
    <message>
        <source>The readings do not tell when it meets the limit.</source>
        <translation>Die Messwerte sagen nicht, wann es den Grenzwert erreicht.</translation>
    </message>
    <message>
        <source>%1 on %2.</source>
        <comment>reading, date</comment>
        <translation>%1 am %2.</translation>
    </message>
    <message>
        <source>The square lies far off and is left out.</source>
        <translation>Das Quadrat liegt weit ab und ist ausgelassen.</translation>
    </message>
    <message>
        <source>Open dots: before it was replaced.</source>
        <translation>Offene Punkte: vor dem Ersetzen.</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>reading, sentence</comment>
        <translation>%1, Diagramm: %2</translation>
    </message>
</context>
<context>
    <name>TrendPage</name>
    <message>
        <source>No reading was taken here yet.</source>
        <translation>Hier wurde noch nichts gemessen.</translation>
    </message>
    <message>
        <source>Readings over time</source>
        <translation>Messwerte im Verlauf</translation>
    </message>
    <message>
        <source>A reading is typed on a walk, at a line that measures something, such as the tires. Two of them make a trend.</source>
        <translation>Ein Messwert wird auf einem Rundgang eingegeben, in einer Zeile, die etwas misst, etwa bei den Reifen. Zwei ergeben einen Trend.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date, reading</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Trip</name>
    <message>
        <source>measured on the way</source>
        <translation>unterwegs gemessen</translation>
    </message>
    <message>
        <source>from this rig&apos;s measured trips</source>
        <translation>aus den gemessenen Fahrten dieses Fahrzeugs</translation>
    </message>
    <message>
        <source>from the road told by hand; common practice</source>
        <translation>aus der von Hand angegebenen Straße; übliche Praxis</translation>
    </message>
    <message>
        <source>no road told, nothing measured: a usual road is taken</source>
        <translation>keine Straße angegeben, nichts gemessen: eine übliche Straße gilt</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>middle %1 m/km, roughest tenth from %2 m/km on, over %3</source>
        <comment>roughness, distance</comment>
        <translation>Mitte %1 m/km, rauestes Zehntel ab %2 m/km, über %3</translation>
    </message>
    <message>
        <source>an index of this rig alone: not calibrated</source>
        <translation>eine Kennzahl nur dieses Fahrzeugs: nicht kalibriert</translation>
    </message>
    <message>
        <source>the sensor met its end: at least so much</source>
        <translation>der Sensor war am Anschlag: mindestens so viel</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) that aged the seals like %1</source>
        <translation>
            <numerusform>%n Tag, der die Dichtungen altern ließ wie %1</numerusform>
            <numerusform>%n Tage, die die Dichtungen altern ließen wie %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 that shook like %2</source>
        <comment>distances</comment>
        <translation>%1, die rüttelten wie %2</translation>
    </message>
    <message>
        <source>Seals: like %1 to %2 days; estimated from the place&apos;s usual weather or its records.</source>
        <translation>Dichtungen: wie %1 bis %2 Tage; geschätzt aus dem üblichen Wetter des Ortes oder seinen Aufzeichnungen.</translation>
    </message>
    <message>
        <source>What the weather did is not known: the trip has no place, or there are no data for it.</source>
        <translation>Was das Wetter tat, ist unbekannt: die Fahrt hat keinen Ort, oder es gibt keine Daten dafür.</translation>
    </message>
    <message>
        <source>Shake: like %1 to %2; %3.</source>
        <comment>distances, basis</comment>
        <translation>Erschütterung: wie %1 bis %2; %3.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Of it straight lines over gaps</source>
        <translation>Davon gerade Linien über Lücken</translation>
    </message>
    <message>
        <source>Start to end</source>
        <translation>Start bis Ende</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Straße</translation>
    </message>
    <message>
        <source>Up and down</source>
        <translation>Auf und ab</translation>
    </message>
    <message>
        <source>%1 up, %2 down</source>
        <comment>climb</comment>
        <translation>%1 auf, %2 ab</translation>
    </message>
    <message>
        <source>Lowest and highest</source>
        <translation>Tiefster und höchster Punkt</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>altitudes</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Positions left out</source>
        <translation>Ausgelassene Positionen</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Gelesen aus</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>number of a stop, time</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>TripMap</name>
    <message>
        <source>%1 W</source>
        <comment>west longitude</comment>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>%1 E</source>
        <comment>east longitude</comment>
        <translation>%1 O</translation>
    </message>
    <message>
        <source>%1 S</source>
        <comment>south latitude</comment>
        <translation>%1 S</translation>
    </message>
    <message>
        <source>%1 N</source>
        <comment>north latitude</comment>
        <translation>%1 N</translation>
    </message>
    <message>
        <source>Map of the trip, north up: from %1 to %2.</source>
        <comment>places</comment>
        <translation>Karte der Fahrt, Norden oben: von %1 nach %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n stop(s).</source>
        <translation>
            <numerusform>%n Zwischenstopp.</numerusform>
            <numerusform>%n Zwischenstopps.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>Wo das Meer ist, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>No coast is near.</source>
        <translation>Keine Küste in der Nähe.</translation>
    </message>
</context>
<context>
    <name>TripPage</name>
    <message>
        <source>No trip yet. A track from a phone or a receiver, as GPX or NMEA, makes one.</source>
        <translation>Noch keine Fahrt. Eine Spur von Telefon oder Empfänger, als GPX oder NMEA, ergibt eine.</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Spur einlesen</translation>
    </message>
    <message>
        <source>This trip has no line to draw: it was written by hand, or its track held too few positions.</source>
        <translation>Diese Fahrt hat keine Linie: sie wurde von Hand eingetragen, oder ihre Spur hatte zu wenige Positionen.</translation>
    </message>
    <message>
        <source>North is up. Ring: start. Dot: end. Numbers: stops of five minutes or more. A broken line is a worse road.</source>
        <translation>Norden ist oben. Ring: Start. Punkt: Ende. Zahlen: Zwischenstopps von fünf Minuten oder mehr. Eine gebrochene Linie ist eine schlechtere Straße.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Zwischenstopps</translation>
    </message>
    <message>
        <source>take in another log of its shaking</source>
        <translation>weiteres Erschütterungsprotokoll einlesen</translation>
    </message>
    <message>
        <source>take in a log of its shaking</source>
        <translation>Erschütterungsprotokoll einlesen</translation>
    </message>
    <message>
        <source>Coast: made from Natural Earth, public domain.</source>
        <translation>Küste: aus Natural Earth erstellt, gemeinfrei.</translation>
    </message>
    <message>
        <source>Roughness along the way, m/km</source>
        <translation>Rauheit unterwegs, m/km</translation>
    </message>
    <message>
        <source>From where the log began. Full bars: rough, over the upper broken line. Under the lower one: smooth. A gap: too slow, uneven or handled.</source>
        <translation>Ab Beginn des Protokolls. Volle Balken: rau, über der oberen gestrichelten Linie. Unter der unteren: glatt. Eine Lücke: zu langsam, ungleichmäßig oder von Hand bewegt.</translation>
    </message>
    <message>
        <source>Trips</source>
        <translation>Fahrten</translation>
    </message>
</context>
<context>
    <name>Voice</name>
    <message>
        <source>%1, %2</source>
        <comment>date, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>S</source>
        <comment>south latitude</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north latitude</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>W</source>
        <comment>west longitude</comment>
        <translation>W</translation>
    </message>
    <message>
        <source>E</source>
        <comment>east longitude</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>maker&apos;s figure</source>
        <translation>Herstellerangabe</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>fitted to what was measured</source>
        <translation>an Gemessenes angepasst</translation>
    </message>
    <message>
        <source>before anything was measured</source>
        <translation>bevor etwas gemessen wurde</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>travel trailer</source>
        <translation>Wohnwagen</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <translation>Sattelanhänger</translation>
    </message>
    <message>
        <source>folding trailer</source>
        <translation>Faltwohnwagen</translation>
    </message>
    <message>
        <source>teardrop</source>
        <translation>Teardrop</translation>
    </message>
    <message>
        <source>truck camper</source>
        <translation>Absetzkabine</translation>
    </message>
    <message>
        <source>motorhome</source>
        <translation>Wohnmobil</translation>
    </message>
    <message>
        <source>camper van</source>
        <translation>Kastenwagen</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a finding</comment>
        <translation>offen</translation>
    </message>
    <message>
        <source>mended, waiting for a look that confirms it</source>
        <translation>repariert, wartet auf eine bestätigende Durchsicht</translation>
    </message>
    <message>
        <source>mended, and seen so</source>
        <translation>repariert und so gesehen</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>nicht mehr da, ohne Reparatur</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>ersetzt</translation>
    </message>
    <message>
        <source>sealed again</source>
        <translation>neu abgedichtet</translation>
    </message>
    <message>
        <source>tightened to the maker&apos;s figure</source>
        <translation>nach Herstellerangabe angezogen</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>gereinigt</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>geschmiert</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>eingestellt</translation>
    </message>
    <message>
        <source>other work</source>
        <translation>andere Arbeit</translation>
    </message>
    <message>
        <source>%1 can be read two ways. Write %2 or %3.</source>
        <translation>%1 lässt sich zweifach lesen. %2 oder %3 schreiben.</translation>
    </message>
</context>
<context>
    <name>WaitingPhotos</name>
    <message>
        <source>No photo waits for its mark.</source>
        <translation>Kein Foto wartet auf seinen Eintrag.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark; press those of this finding</source>
        <translation>
            <numerusform>%n Foto wartet auf einen Eintrag; drücken, wenn es zu diesem Befund gehört</numerusform>
            <numerusform>%n Fotos warten auf einen Eintrag; die dieses Befunds drücken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark</source>
        <translation>
            <numerusform>%n Foto wartet auf einen Eintrag</numerusform>
            <numerusform>%n Fotos warten auf einen Eintrag</numerusform>
        </translation>
    </message>
    <message>
        <source>waiting, number %1</source>
        <comment>photo</comment>
        <translation>wartend, Nummer %1</translation>
    </message>
    <message>
        <source>put away</source>
        <comment>a photo</comment>
        <translation>weglegen</translation>
    </message>
    <message numerus="yes">
        <source>bring back %n put away</source>
        <comment>photos</comment>
        <translation>
            <numerusform>%n weggelegtes zurückholen</numerusform>
            <numerusform>%n weggelegte zurückholen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WalkBudget</name>
    <message>
        <source>Left out, though on the hold list: %1.</source>
        <comment>points</comment>
        <translation>Ausgelassen, obwohl auf der Halt-Liste: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>points</comment>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Leaves out %1 of %2 points: %3.</source>
        <translation>Lässt %1 von %2 Punkten aus: %3.</translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message numerus="yes">
        <source>%n line(s) left</source>
        <comment>of the walk</comment>
        <translation>
            <numerusform>noch %n Zeile</numerusform>
            <numerusform>noch %n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>stand; lines left</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>alle Zeilen</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>rückgängig</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>unauffällig auf einen Blick</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>hier aufhören</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>Notfall</translation>
    </message>
</context>
<context>
    <name>WalkRow</name>
    <message>
        <source>%1, still open</source>
        <comment>kind of walk</comment>
        <translation>%1, noch offen</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, von %2</translation>
    </message>
</context>
<context>
    <name>WalkWords</name>
    <message>
        <source>could not look</source>
        <comment>act</comment>
        <translation>nicht eingesehen</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>act</comment>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>look again later</source>
        <comment>act</comment>
        <translation>später wieder ansehen</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>unauffällig auf einen Blick</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>alle Zeilen</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>hier aufhören</translation>
    </message>
    <message>
        <source>photos now, marks after</source>
        <translation>jetzt Fotos, danach Einträge</translation>
    </message>
</context>
<context>
    <name>WeighPicture</name>
    <message>
        <source>coupled</source>
        <comment>on the scale</comment>
        <translation>gekuppelt</translation>
    </message>
    <message>
        <source>with bars</source>
        <comment>on the scale</comment>
        <translation>mit Stangen</translation>
    </message>
    <message>
        <source>alone</source>
        <comment>on the scale</comment>
        <translation>allein</translation>
    </message>
</context>
<context>
    <name>WentPage</name>
    <message>
        <source>How it went</source>
        <translation>Wie es lief</translation>
    </message>
    <message>
        <source>Of what</source>
        <comment>a plot is about it</comment>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>one of several plots</comment>
        <translation>Welches</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>title, sentence</comment>
        <translation>%1, Bild: %2</translation>
    </message>
    <message>
        <source>Press the plot, or go along it, to read its numbers.</source>
        <translation>Auf das Bild drücken oder daran entlanggehen, um seine Zahlen zu lesen.</translation>
    </message>
    <message>
        <source>earlier</source>
        <comment>go back in time along a plot</comment>
        <translation>früher</translation>
    </message>
    <message>
        <source>later</source>
        <comment>go on in time along a plot</comment>
        <translation>später</translation>
    </message>
    <message>
        <source>the last two years alone</source>
        <translation>nur die letzten zwei Jahre</translation>
    </message>
    <message>
        <source>every month there is</source>
        <translation>alle Monate, die es gibt</translation>
    </message>
    <message>
        <source>fold the numbers</source>
        <translation>Zahlen einklappen</translation>
    </message>
    <message>
        <source>all its numbers</source>
        <translation>alle seine Zahlen</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Speichern: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>WhatIfPage</name>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>Say where it would stand and how far it would go: the dates that move are worked out. Nothing of this is written into the logbook.</source>
        <translation>Angeben, wo es stünde und wie weit es führe: berechnet wird, welche Termine sich verschieben. Nichts davon kommt ins Logbuch.</translation>
    </message>
    <message>
        <source>take away</source>
        <comment>a leg of the plan</comment>
        <translation>entfernen</translation>
    </message>
    <message>
        <source>take away %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <source>One leg more</source>
        <translation>Noch ein Abschnitt</translation>
    </message>
    <message>
        <source>The first leg</source>
        <translation>Der erste Abschnitt</translation>
    </message>
</context>
<context>
    <name>WheelMap</name>
    <message>
        <source>front</source>
        <comment>of the rig, on a drawing from above</comment>
        <translation>vorn</translation>
    </message>
    <message>
        <source>%1: no reading was taken yet</source>
        <comment>a wheel</comment>
        <translation>%1: noch nicht gemessen</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>seine Messwerte im Verlauf</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>Herstellerangabe: nicht eingegeben</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>limits, whose</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>low</source>
        <comment>a reading</comment>
        <translation>niedrig</translation>
    </message>
    <message>
        <source>high</source>
        <comment>a reading</comment>
        <translation>hoch</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
</context>
<context>
    <name>WhyFacts</name>
    <message>
        <source>pass, at a glance</source>
        <translation>unauffällig, auf einen Blick</translation>
    </message>
    <message>
        <source>pass, measured</source>
        <translation>unauffällig, gemessen</translation>
    </message>
    <message>
        <source>pass, looked at</source>
        <translation>unauffällig, angesehen</translation>
    </message>
    <message>
        <source>attention</source>
        <translation>Auffälligkeit</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>nicht eingesehen: %1</translation>
    </message>
    <message>
        <source>time, as it ages it</source>
        <translation>die Zeit, wie sie es altern lässt</translation>
    </message>
    <message>
        <source>distance, as the road uses it up</source>
        <translation>die Strecke, wie die Straße es verbraucht</translation>
    </message>
    <message>
        <source>nobody has looked at it yet</source>
        <translation>noch niemand hat es angesehen</translation>
    </message>
    <message>
        <source>its readings, on their way to a limit</source>
        <translation>seine Messwerte, auf dem Weg zu einem Grenzwert</translation>
    </message>
    <message>
        <source>each move</source>
        <translation>jede Bewegung</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervall</translation>
    </message>
    <message>
        <source>What makes it due</source>
        <translation>Was es fällig macht</translation>
    </message>
    <message>
        <source>Rests on</source>
        <comment>what a figure rests on</comment>
        <translation>Beruht auf</translation>
    </message>
    <message>
        <source>Time to look from</source>
        <translation>Zeit zum Ansehen ab</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>what, who</comment>
        <translation>%1, von %2</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Nothing has a date yet: dates come with the first walk.</source>
        <translation>Noch hat nichts ein Datum: Termine kommen mit dem ersten Rundgang.</translation>
    </message>
    <message>
        <source>How the date comes about</source>
        <translation>Wie das Datum zustande kommt</translation>
    </message>
    <message>
        <source>From the catalogue&apos;s date down: a step to the left is sooner, to the right later. Ring: likely, on its line from early to late. Upright: today.</source>
        <translation>Vom Datum des Katalogs abwärts: ein Schritt nach links ist früher, nach rechts später. Ring: wahrscheinlich, auf der Linie von früh bis spät. Senkrechte: heute.</translation>
    </message>
    <message>
        <source>What it goes by</source>
        <translation>Wonach es geht</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>seine Messwerte im Verlauf</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>was, wenn es woanders hingeht</translation>
    </message>
    <message>
        <source>Last looks and mends</source>
        <translation>Letzte Durchsichten und Reparaturen</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Noch keine.</translation>
    </message>
    <message>
        <source>What the weather is taken from</source>
        <translation>Woher das Wetter stammt</translation>
    </message>
    <message>
        <source>Where the catalogue has it from</source>
        <translation>Woher der Katalog es hat</translation>
    </message>
    <message>
        <source>Why it is due then</source>
        <translation>Warum es dann fällig ist</translation>
    </message>
</context>
<context>
    <name>WhyPicture</name>
    <message>
        <source>by the catalogue alone</source>
        <translation>nach dem Katalog allein</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The catalogue alone: %1.</source>
        <translation>Der Katalog allein: %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>small causes together</source>
        <translation>kleine Ursachen zusammen</translation>
    </message>
    <message>
        <source>Likely: %1.</source>
        <translation>Wahrscheinlich: %1.</translation>
    </message>
</context>
<context>
    <name>ZoomRow</name>
    <message>
        <source>drawing nearer</source>
        <translation>Zeichnung näher</translation>
    </message>
    <message>
        <source>drawing farther</source>
        <translation>Zeichnung weiter weg</translation>
    </message>
    <message>
        <source>whole</source>
        <comment>the whole drawing</comment>
        <translation>ganz</translation>
    </message>
    <message>
        <source>left</source>
        <comment>move the drawing</comment>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <comment>move the drawing</comment>
        <translation>rechts</translation>
    </message>
    <message>
        <source>up</source>
        <comment>move the drawing</comment>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <comment>move the drawing</comment>
        <translation>unten</translation>
    </message>
    <message>
        <source>every finding ever</source>
        <translation>jeder Befund je</translation>
    </message>
</context>
<context>
    <name>snugwalk::BenchModel</name>
    <message>
        <source>To keep it, start a walk and mark “%1” first.</source>
        <comment>a point</comment>
        <translation>Zum Ablegen erst einen Rundgang beginnen und „%1“ eintragen.</translation>
    </message>
    <message>
        <source>To keep it, mark “%1” on this walk first: what it got is said by a person.</source>
        <comment>a point</comment>
        <translation>Zum Ablegen erst „%1“ auf diesem Rundgang eintragen: das Ergebnis sagt ein Mensch.</translation>
    </message>
    <message>
        <source>“%1” is on attention: its readings go with the finding.</source>
        <comment>a point</comment>
        <translation>„%1“ steht auf Auffälligkeit: seine Messwerte gehen mit dem Befund.</translation>
    </message>
    <message>
        <source>%1, on “%2”</source>
        <comment>reading, point</comment>
        <translation>%1, an „%2“</translation>
    </message>
    <message>
        <source>Still to type: %1.</source>
        <translation>Noch einzugeben: %1.</translation>
    </message>
    <message>
        <source>Kept on this walk: %1.</source>
        <translation>Auf diesem Rundgang abgelegt: %1.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BookModel</name>
    <message>
        <source>There are no two walks to lay side by side yet.</source>
        <translation>Noch gibt es keine zwei Rundgänge zum Nebeneinanderlegen.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BooksModel</name>
    <message>
        <source>Making the invented rig …</source>
        <translation>Das erfundene Fahrzeug entsteht …</translation>
    </message>
    <message>
        <source>Making the invented rig: %1 of %2</source>
        <translation>Das erfundene Fahrzeug entsteht: %1 von %2</translation>
    </message>
    <message>
        <source>The invented rig is gone from this device.</source>
        <translation>Das erfundene Fahrzeug ist von diesem Gerät entfernt.</translation>
    </message>
    <message>
        <source>Copying the logbook with its photos …</source>
        <translation>Das Logbuch wird mit seinen Fotos kopiert …</translation>
    </message>
    <message>
        <source>Copied with its photos: %1</source>
        <translation>Mit seinen Fotos kopiert: %1</translation>
    </message>
    <message>
        <source>Copying and checking the backup …</source>
        <translation>Die Sicherungskopie wird kopiert und geprüft …</translation>
    </message>
    <message>
        <source>Checked and opened: %1</source>
        <translation>Geprüft und geöffnet: %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::DrawingModel</name>
    <message>
        <source>%1, %2</source>
        <comment>what a photo shows, date</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Type the length first, such as 120 mm or 4 3/4 in.</source>
        <translation>Erst die Länge eingeben, etwa 120 mm oder 4 3/4 in.</translation>
    </message>
    <message>
        <source>Not understood: %1. Write it for example as 120 mm or 4 3/4 in.</source>
        <translation>Nicht verstanden: %1. Zum Beispiel so schreiben: 120 mm oder 4 3/4 in.</translation>
    </message>
</context>
<context>
    <name>snugwalk::DueModel</name>
    <message>
        <source>before each move</source>
        <translation>vor jeder Bewegung</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>noch nicht angesehen</translation>
    </message>
    <message numerus="yes">
        <source>past due %n days</source>
        <translation>
            <numerusform>seit %n Tag überfällig</numerusform>
            <numerusform>seit %n Tagen überfällig</numerusform>
        </translation>
    </message>
    <message>
        <source>due now, at the latest %1</source>
        <translation>jetzt fällig, spätestens %1</translation>
    </message>
    <message>
        <source>likely %1, from %2 to %3</source>
        <translation>wahrscheinlich %1, von %2 bis %3</translation>
    </message>
    <message>
        <source>Nothing falls due within a month.</source>
        <translation>Binnen eines Monats wird nichts fällig.</translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n ist überfällig.</numerusform>
            <numerusform>%n sind überfällig.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fall due within a month.</source>
        <translation>
            <numerusform>%n wird binnen eines Monats fällig.</numerusform>
            <numerusform>%n werden binnen eines Monats fällig.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not looked at yet.</source>
        <translation>
            <numerusform>%n wurde noch nicht angesehen.</numerusform>
            <numerusform>%n wurden noch nicht angesehen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) are due sooner than by the catalogue alone.</source>
        <translation>
            <numerusform>%n Punkt ist früher fällig als nach dem Katalog allein.</numerusform>
            <numerusform>%n Punkte sind früher fällig als nach dem Katalog allein.</numerusform>
        </translation>
    </message>
    <message>
        <source>Moved most: %1, %2.</source>
        <comment>point, 1.3 months sooner: causes</comment>
        <translation>Am stärksten verschoben: %1, %2.</translation>
    </message>
</context>
<context>
    <name>snugwalk::FindingModel</name>
    <message>
        <source>gone</source>
        <translation>nicht mehr da</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>mend soon, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>bald reparieren, %1</translation>
    </message>
    <message>
        <source>watch, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>beobachten, %1</translation>
    </message>
    <message>
        <source>Concern %1, between %2 and %3, of 100.</source>
        <translation>Bedenken %1, zwischen %2 und %3, von 100.</translation>
    </message>
    <message>
        <source>may be as bad as the first of its kind</source>
        <comment>a tie</comment>
        <translation>kann so schlimm sein wie der erste seiner Art</translation>
    </message>
</context>
<context>
    <name>snugwalk::IntakeModel</name>
    <message>
        <source>a trip</source>
        <translation>eine Fahrt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>trip, date</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::LastActModel</name>
    <message>
        <source>%1, written %2</source>
        <comment>thing, date</comment>
        <translation>%1, geschrieben %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::PaperModel</name>
    <message>
        <source>key on paper of %1</source>
        <comment>date</comment>
        <translation>Schlüssel auf Papier vom %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::PlotsModel</name>
    <message>
        <source>the worst of the rig</source>
        <translation>das Schlimmste am Fahrzeug</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>picture, PNG</source>
        <comment>kind of file</comment>
        <translation>Bild, PNG</translation>
    </message>
    <message>
        <source>drawing, SVG</source>
        <comment>kind of file</comment>
        <translation>Zeichnung, SVG</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>Tabelle, CSV</translation>
    </message>
</context>
<context>
    <name>snugwalk::PointsModel</name>
    <message numerus="yes">
        <source>%n point(s)</source>
        <comment>of a rig</comment>
        <translation>
            <numerusform>%n Punkt</numerusform>
            <numerusform>%n Punkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n eigener</numerusform>
            <numerusform>%n eigene</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hidden</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n verborgen</numerusform>
            <numerusform>%n verborgen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at an interval of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n mit eigenem Intervall</numerusform>
            <numerusform>%n mit eigenem Intervall</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugwalk::PositionModel</name>
    <message>
        <source>no position</source>
        <translation>keine Position</translation>
    </message>
</context>
<context>
    <name>snugwalk::ReportModel</name>
    <message>
        <source>PDF</source>
        <comment>kind of file</comment>
        <translation>PDF</translation>
    </message>
    <message>
        <source>web page</source>
        <comment>kind of file</comment>
        <translation>Webseite</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>Tabelle, CSV</translation>
    </message>
    <message>
        <source>calendar</source>
        <comment>kind of file</comment>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>map data, GeoJSON</source>
        <comment>kind of file</comment>
        <translation>Kartendaten, GeoJSON</translation>
    </message>
    <message>
        <source>the last one</source>
        <comment>which walk</comment>
        <translation>der letzte</translation>
    </message>
    <message>
        <source>the one that suits</source>
        <comment>which earlier walk</comment>
        <translation>der passende</translation>
    </message>
</context>
<context>
    <name>snugwalk::RigModel</name>
    <message>
        <source>Go on with the walk</source>
        <translation>Rundgang fortsetzen</translation>
    </message>
    <message>
        <source>Start a walk</source>
        <translation>Rundgang beginnen</translation>
    </message>
    <message>
        <source>every line has a mark</source>
        <translation>jede Zeile hat einen Eintrag</translation>
    </message>
    <message>
        <source>at %1, %2 left</source>
        <comment>line of the walk, number of lines</comment>
        <translation>bei %1, noch %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::Session</name>
    <message>
        <source>one person</source>
        <comment>who looked</comment>
        <translation>eine Person</translation>
    </message>
</context>
<context>
    <name>snugwalk::SuppliesModel</name>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, due</source>
        <comment>point</comment>
        <translation>%1, fällig</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what for, how much</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <comment>amount</comment>
        <translation>%1 nötig</translation>
    </message>
    <message>
        <source>%1 on hand</source>
        <comment>amount</comment>
        <translation>%1 vorhanden</translation>
    </message>
    <message>
        <source>get %1</source>
        <comment>how many pieces</comment>
        <translation>%1 besorgen</translation>
    </message>
</context>
<context>
    <name>snugwalk::TapeModel</name>
    <message>
        <source>at a glance</source>
        <translation>auf einen Blick</translation>
    </message>
</context>
<context>
    <name>snugwalk::TripModel</name>
    <message>
        <source>A trip</source>
        <translation>Eine Fahrt</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>date, times</comment>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::WalkModel</name>
    <message>
        <source>%1 of %2 lines, %3 left</source>
        <translation>%1 von %2 Zeilen, noch %3</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhatIfModel</name>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>under a roof</source>
        <translation>unter Dach</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>im Freien</translation>
    </message>
    <message>
        <source>%1 driven, road: %2</source>
        <translation>%1 gefahren, Straße: %2</translation>
    </message>
    <message>
        <source>No date moves.</source>
        <translation>Kein Termin verschiebt sich.</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) come sooner.</source>
        <translation>
            <numerusform>%n Termin rückt vor.</numerusform>
            <numerusform>%n Termine rücken vor.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) go later.</source>
        <translation>
            <numerusform>%n Termin rückt nach hinten.</numerusform>
            <numerusform>%n Termine rücken nach hinten.</numerusform>
        </translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>einen Tag früher</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>einen Tag später</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, cause</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, as usual %2</source>
        <comment>dates</comment>
        <translation>%1, wie üblich %2</translation>
    </message>
    <message>
        <source>Another leg has some of these days.</source>
        <translation>Ein anderer Abschnitt hat einige dieser Tage.</translation>
    </message>
    <message>
        <source>Change the days, or take the other leg away.</source>
        <translation>Die Tage ändern oder den anderen Abschnitt entfernen.</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhyModel</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>früh %1, wahrscheinlich %2, spät %3</translation>
    </message>
</context>
</TS>
