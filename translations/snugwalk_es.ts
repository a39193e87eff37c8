<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AboutPage</name>
    <message>
        <source>Temperature and rain: Legates and Willmott 1989 and CRU CL 2.0 (New, Lister, Hulme, Makin 2002), as mapped by Marble; adapted. Licence: CC BY-SA 3.0.</source>
        <translation>Temperatura y lluvia: Legates y Willmott 1989 y CRU CL 2.0 (New, Lister, Hulme, Makin 2002), según los mapas de Marble; adaptados. Licencia: CC BY-SA 3.0.</translation>
    </message>
    <message>
        <source>Heights and sea air: ETOPO5 and COADS, NOAA, as packed with Ferret.</source>
        <translation>Alturas y aire de mar: ETOPO5 y COADS, NOAA, según el paquete de Ferret.</translation>
    </message>
    <message>
        <source>Coastline: made with Natural Earth, public domain.</source>
        <translation>Línea de costa: hecha con Natural Earth, dominio público.</translation>
    </message>
    <message>
        <source>The invented rig, its tracks and photos: made for this program, CC0 1.0.</source>
        <translation>El vehículo inventado, sus recorridos y fotos: hechos para este programa, CC0 1.0.</translation>
    </message>
    <message>
        <source>public domain</source>
        <translation>dominio público</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Acerca de</translation>
    </message>
    <message>
        <source>Looks after a rig without a network: what was looked at, by whom, what was found. Nothing leaves this device unless you exchange or copy it.</source>
        <translation>Cuida un vehículo sin red: qué se miró, quién lo miró, qué se encontró. Nada sale de este dispositivo si usted no lo intercambia o copia.</translation>
    </message>
    <message>
        <source>Licence of the program: Apache 2.0. It comes without any warranty.</source>
        <translation>Licencia del programa: Apache 2.0. Se entrega sin ninguna garantía.</translation>
    </message>
    <message>
        <source>Where data come from</source>
        <translation>De dónde vienen los datos</translation>
    </message>
    <message>
        <source>What it is built with, under these licences</source>
        <translation>Con qué está hecho, bajo estas licencias</translation>
    </message>
    <message>
        <source>Place names: GeoNames (geonames.org), a choice of them with rounded coordinates. Licence: CC BY 4.0, creativecommons.org/licenses/by/4.0.</source>
        <translation>Nombres de lugares: GeoNames (geonames.org), una selección con coordenadas redondeadas. Licencia: CC BY 4.0, creativecommons.org/licenses/by/4.0.</translation>
    </message>
</context>
<context>
    <name>AcceptPage</name>
    <message>
        <source>Nothing is on hold that could be accepted. A hold for something found cannot be accepted by anyone.</source>
        <translation>Nada está retenido que se pueda aceptar. Una retención por algo encontrado no la puede aceptar nadie.</translation>
    </message>
    <message>
        <source>One&apos;s own decision</source>
        <translation>Decisión propia</translation>
    </message>
    <message>
        <source>I could not look at %1 because %2. I know that %3 may follow. I move it once, today, on my own decision.</source>
        <comment>point, reason, what may follow</comment>
        <translation>No pude revisar %1 porque %2. Sé que puede ocurrir: %3. Lo muevo una vez, hoy, por decisión propia.</translation>
    </message>
    <message>
        <source>because</source>
        <comment>I could not look because</comment>
        <translation>porque</translation>
    </message>
    <message>
        <source>what may follow</source>
        <translation>qué puede ocurrir</translation>
    </message>
    <message>
        <source>Written down as decided by %1. It ends when the rig is uncoupled, after 24 hours at the latest, and stands on the slip.</source>
        <translation>Se anota como decidido por %1. Termina al desenganchar, a las 24 horas como muy tarde, y consta en la hoja.</translation>
    </message>
    <message>
        <source>First write in the settings who looks.</source>
        <translation>Escriba primero en los ajustes quién revisa.</translation>
    </message>
    <message>
        <source>Do not move it</source>
        <translation>No moverlo</translation>
    </message>
    <message>
        <source>I decide so</source>
        <translation>Así lo decido</translation>
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
        <translation>Un punto propio</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué revisar</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>When it passes</source>
        <translation>Cuándo pasa</translation>
    </message>
    <message>
        <source>Where one stands</source>
        <translation>Desde dónde se mira</translation>
    </message>
    <message>
        <source>Part of the rig</source>
        <translation>Parte del vehículo</translation>
    </message>
    <message>
        <source>What fails with it</source>
        <translation>Qué falla con ello</translation>
    </message>
    <message>
        <source>Every how many months</source>
        <translation>Cada cuántos meses</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Cada cuánta distancia</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>por ejemplo 10 000 km o 6000 mi</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Añadirlo</translation>
    </message>
    <message>
        <source>first tell what, where, what fails with it, and how often</source>
        <translation>primero diga qué, dónde, qué falla con ello y cada cuánto</translation>
    </message>
</context>
<context>
    <name>AsideRow</name>
    <message>
        <source>Set aside: %1.</source>
        <comment>reason</comment>
        <translation>Apartado: %1.</translation>
    </message>
    <message>
        <source>take it over</source>
        <comment>an entry that was set aside</comment>
        <translation>aceptarlo</translation>
    </message>
    <message>
        <source>take over: %1</source>
        <comment>entry</comment>
        <translation>aceptar: %1</translation>
    </message>
</context>
<context>
    <name>BeadPicture</name>
    <message>
        <source>section, to scale; the joint is %1 long</source>
        <translation>sección a escala; la junta mide %1</translation>
    </message>
</context>
<context>
    <name>BenchField</name>
    <message>
        <source>%1, if known</source>
        <comment>a figure that may stay empty</comment>
        <translation>%1, si se sabe</translation>
    </message>
</context>
<context>
    <name>BenchInputs</name>
    <message>
        <source>without a unit: %1</source>
        <comment>unit symbol</comment>
        <translation>sin unidad: %1</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>separados por punto y coma</translation>
    </message>
    <message>
        <source>written as 2026-11-24</source>
        <translation>escrita como 2026-11-24</translation>
    </message>
    <message>
        <source>left empty: %1</source>
        <comment>the usual figure</comment>
        <translation>vacío: %1</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <comment>heading: worked computations</comment>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Numbers worked out on the spot. The maker&apos;s figure goes before any of them.</source>
        <translation>Números calculados en el lugar. La cifra del fabricante va antes que cualquiera de ellos.</translation>
    </message>
    <message>
        <source>to the questions on %1</source>
        <translation>a las preguntas sobre %1</translation>
    </message>
</context>
<context>
    <name>BenchPictures</name>
    <message>
        <source>trailer&apos;s axles</source>
        <translation>ejes del remolque</translation>
    </message>
    <message>
        <source>%1: coupled %2</source>
        <comment>axle, mass</comment>
        <translation>%1: enganchado %2</translation>
    </message>
    <message>
        <source>%1: alone %2</source>
        <comment>axle, mass</comment>
        <translation>%1: solo %2</translation>
    </message>
    <message>
        <source>Section of the bead: %1 wide, %2 high, %3 long</source>
        <translation>Sección del cordón: %1 de ancho, %2 de alto, %3 de largo</translation>
    </message>
    <message>
        <source>tow vehicle, front axle</source>
        <translation>vehículo, eje delantero</translation>
    </message>
    <message>
        <source>tow vehicle, rear axle</source>
        <translation>vehículo, eje trasero</translation>
    </message>
    <message>
        <source>Tow vehicle and trailer on the scale, one pad an axle: nothing typed yet.</source>
        <translation>Vehículo y remolque en la báscula, una placa por eje: todavía no se escribió nada.</translation>
    </message>
</context>
<context>
    <name>BenchWords</name>
    <message>
        <source>%1 to %2, in %3 of 100 cases</source>
        <comment>a range, how sure</comment>
        <translation>%1 a %2, en %3 de 100 casos</translation>
    </message>
    <message>
        <source>It can be %1 to %2.</source>
        <comment>limits of a figure</comment>
        <translation>Puede ser de %1 a %2.</translation>
    </message>
    <message>
        <source>It is at least %1.</source>
        <translation>Es al menos %1.</translation>
    </message>
    <message>
        <source>It is at most %1.</source>
        <translation>Es como máximo %1.</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Revise el número y su unidad.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out.</source>
        <translation>Más allá de lo que se puede calcular.</translation>
    </message>
    <message>
        <source>Not a date. Write it as 2026-11-24.</source>
        <translation>No es una fecha. Escríbala como 2026-11-24.</translation>
    </message>
    <message>
        <source>Choose one of the words.</source>
        <translation>Elija una de las palabras.</translation>
    </message>
    <message>
        <source>Not understood. Write a whole number.</source>
        <translation>No se entendió. Escriba un número entero.</translation>
    </message>
    <message>
        <source>Not understood. Write it as in the worked example.</source>
        <translation>No se entendió. Escríbalo como en el ejemplo resuelto.</translation>
    </message>
    <message>
        <source>Not understood. Write the number alone.</source>
        <translation>No se entendió. Escriba solo el número.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a figure, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Taken as usual: %1.</source>
        <translation>Tomado como de costumbre: %1.</translation>
    </message>
    <message>
        <source>Not understood. Write the number with its unit, %1 or another.</source>
        <translation>No se entendió. Escriba el número con su unidad, %1 u otra.</translation>
    </message>
    <message>
        <source>%1. Read it again.</source>
        <comment>what does not go together</comment>
        <translation>%1. Léalo otra vez.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out. Read it again.</source>
        <translation>Más allá de lo que se puede calcular. Léalo otra vez.</translation>
    </message>
    <message>
        <source>This does not go with the other figures. Read it again.</source>
        <translation>No concuerda con las otras cifras. Léalo otra vez.</translation>
    </message>
</context>
<context>
    <name>BookRows</name>
    <message numerus="yes">
        <source>%n pass</source>
        <translation>
            <numerusform>%n pasa</numerusform>
            <numerusform>%n pasan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n attention</source>
        <translation>
            <numerusform>%n atención</numerusform>
            <numerusform>%n atenciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not look</source>
        <translation>
            <numerusform>%n no se pudo revisar</numerusform>
            <numerusform>%n no se pudieron revisar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not fitted</source>
        <translation>
            <numerusform>%n no lo lleva</numerusform>
            <numerusform>%n no los lleva</numerusform>
        </translation>
    </message>
    <message>
        <source>road not known</source>
        <translation>camino desconocido</translation>
    </message>
    <message>
        <source>smooth road</source>
        <translation>camino liso</translation>
    </message>
    <message>
        <source>broken road</source>
        <translation>camino roto</translation>
    </message>
    <message>
        <source>gravel</source>
        <translation>ripio</translation>
    </message>
    <message>
        <source>washboard</source>
        <translation>serrucho</translation>
    </message>
    <message>
        <source>track</source>
        <translation>huella</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) not looked at</source>
        <translation>
            <numerusform>%n línea sin revisar</numerusform>
            <numerusform>%n líneas sin revisar</numerusform>
        </translation>
    </message>
    <message>
        <source>from: %1; to: %2</source>
        <comment>places</comment>
        <translation>desde: %1; hasta: %2</translation>
    </message>
</context>
<context>
    <name>BooksBlock</name>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Bitácoras (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Bitácora</translation>
    </message>
    <message>
        <source>Logbooks of this device</source>
        <translation>Bitácoras de este dispositivo</translation>
    </message>
    <message>
        <source>back it up: copy it with its photos</source>
        <translation>hacer una copia: copiarla con sus fotos</translation>
    </message>
    <message>
        <source>bring a backup back, as a logbook of its own</source>
        <translation>recuperar una copia, como bitácora aparte</translation>
    </message>
    <message>
        <source>look round an invented rig</source>
        <translation>mirar un vehículo inventado</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>quitar el vehículo inventado</translation>
    </message>
    <message>
        <source>Where the copy goes</source>
        <translation>Adónde va la copia</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>Una copia de una bitácora</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>Photos now, marks after</source>
        <translation>Fotos ahora, marcas después</translation>
    </message>
    <message>
        <source>Photo of the finding</source>
        <translation>Foto del hallazgo</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>lo que ve la cámara</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>La cámara está arrancando …</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Tomar la foto</translation>
    </message>
    <message>
        <source>The last photo, faint, to stand where it was taken</source>
        <translation>La última foto, tenue, para ponerse donde se tomó</translation>
    </message>
    <message>
        <source>shown</source>
        <comment>the faint photo</comment>
        <translation>mostrada</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>the faint photo</comment>
        <translation>sin ella</translation>
    </message>
    <message>
        <source>Both hands for the ladder: take them here, or from a camera on a pole by file. Mark with both feet on the ground.</source>
        <translation>Las dos manos para la escalera: tómelas aquí, o con una cámara en un palo y por archivo. Marque con los dos pies en el suelo.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Volver al hallazgo</translation>
    </message>
    <message>
        <source>Light of the camera</source>
        <translation>Luz de la cámara</translation>
    </message>
    <message>
        <source>on</source>
        <comment>the light</comment>
        <translation>encendida</translation>
    </message>
    <message>
        <source>off</source>
        <comment>the light</comment>
        <translation>apagada</translation>
    </message>
</context>
<context>
    <name>CautionCard</name>
    <message>
        <source>read: go on</source>
        <comment>cautions were read</comment>
        <translation>leído: seguir</translation>
    </message>
    <message>
        <source>read: the next</source>
        <comment>a caution was read</comment>
        <translation>leído: la siguiente</translation>
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
        <translation>Lo mismo en palabras</translation>
    </message>
    <message>
        <source>copy the words</source>
        <translation>copiar las palabras</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Two walks side by side</source>
        <translation>Dos rondas lado a lado</translation>
    </message>
    <message>
        <source>Walk round twice, on different days: then this page tells what is new, worse or mended since.</source>
        <translation>Haga dos rondas en días distintos: entonces esta página dice qué hay nuevo, peor o reparado desde entonces.</translation>
    </message>
</context>
<context>
    <name>CompareRow</name>
    <message>
        <source>%1: then %2, now %3, %4</source>
        <comment>point: state, state, change</comment>
        <translation>%1: antes %2, ahora %3, %4</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>peor</translation>
    </message>
    <message>
        <source>same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>better</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>reparado</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>ya no está, sin reparación</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>sin revisar</translation>
    </message>
    <message>
        <source>first look</source>
        <translation>primera revisión</translation>
    </message>
    <message>
        <source>no longer fitted</source>
        <translation>ya no lo lleva</translation>
    </message>
    <message>
        <source>%1: %2, was %3</source>
        <comment>reading, now, then</comment>
        <translation>%1: %2, antes %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>defect: change</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2, against %3</source>
        <comment>kind of walk, date now, date then</comment>
        <translation>%1, %2, frente a %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>reading: faster than expected</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Held against: %1.</source>
        <comment>how the earlier walk was found</comment>
        <translation>Comparada con: %1.</translation>
    </message>
    <message>
        <source>Added to the rig since: %1.</source>
        <translation>Añadido al vehículo desde entonces: %1.</translation>
    </message>
    <message>
        <source>Taken from the rig since: %1.</source>
        <translation>Quitado del vehículo desde entonces: %1.</translation>
    </message>
    <message>
        <source>Changed on the rig since: %1.</source>
        <translation>Cambiado en el vehículo desde entonces: %1.</translation>
    </message>
    <message>
        <source>No longer fitted: %1.</source>
        <translation>Ya no está montado: %1.</translation>
    </message>
    <message>
        <source>Fitted since: %1.</source>
        <translation>Montado desde entonces: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n nuevo</numerusform>
            <numerusform>%n nuevos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n worse</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n peor</numerusform>
            <numerusform>%n peores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n same</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n igual</numerusform>
            <numerusform>%n iguales</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n better</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n mejor</numerusform>
            <numerusform>%n mejores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mended</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n reparado</numerusform>
            <numerusform>%n reparados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gone, without a mend</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n ya no está, sin reparación</numerusform>
            <numerusform>%n ya no están, sin reparación</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not looked at</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n sin revisar</numerusform>
            <numerusform>%n sin revisar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n first look</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n primera revisión</numerusform>
            <numerusform>%n primeras revisiones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n no longer fitted</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n que ya no lleva</numerusform>
            <numerusform>%n que ya no lleva</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ConflictRow</name>
    <message>
        <source>shown until someone chooses</source>
        <translation>se muestra hasta que alguien elija</translation>
    </message>
    <message>
        <source>Take this one</source>
        <translation>Quedarse con esta</translation>
    </message>
    <message>
        <source>Take this one: %1, %2</source>
        <comment>value, who wrote it</comment>
        <translation>Quedarse con esta: %1, %2</translation>
    </message>
</context>
<context>
    <name>ConflictsPage</name>
    <message>
        <source>What differs</source>
        <translation>Lo que difiere</translation>
    </message>
    <message>
        <source>Nothing was written differently, and nothing is set aside.</source>
        <translation>Nada se anotó de dos maneras y nada está apartado.</translation>
    </message>
    <message>
        <source>Two people wrote without knowing of each other. The choice is written as an entry of its own; both versions stay in the record.</source>
        <translation>Dos personas anotaron sin saber una de otra. La elección se anota como entrada propia; ambas versiones quedan en la bitácora.</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>These entries do not count. Take over what you have looked at and want to stand.</source>
        <translation>Estas entradas no cuentan. Acepte lo que haya revisado y quiera que valga.</translation>
    </message>
    <message>
        <source>These entries do not count. Only an owner can take them over.</source>
        <translation>Estas entradas no cuentan. Solo un propietario puede aceptarlas.</translation>
    </message>
    <message>
        <source>Take over all of them</source>
        <translation>Aceptarlas todas</translation>
    </message>
</context>
<context>
    <name>CurrentLine</name>
    <message>
        <source>all of them</source>
        <comment>points of one line</comment>
        <translation>todos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: state</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Pass: %1</source>
        <comment>what it takes</comment>
        <translation>Pasa: %1</translation>
    </message>
</context>
<context>
    <name>DemoBand</name>
    <message>
        <source>An invented rig to look round: nothing of it is real, and none of it gets into your own logbook.</source>
        <translation>Un vehículo inventado para mirar: nada de él es real, y nada de él entra en su propia bitácora.</translation>
    </message>
    <message>
        <source>to my own logbook</source>
        <translation>a mi propia bitácora</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>quitar el vehículo inventado</translation>
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
        <translation>revocar</translation>
    </message>
    <message>
        <source>revoke %1</source>
        <comment>device</comment>
        <translation>revocar %1</translation>
    </message>
    <message>
        <source>Revoking cannot take back what that device has read: it keeps it. From now on it gets nothing new, and what it writes from now on is set aside for you to look at. What it wrote and has not exchanged yet is set aside too.</source>
        <translation>Revocar no puede retirar lo que ese dispositivo ya leyó: lo conserva. Desde ahora no recibe nada nuevo, y lo que anote desde ahora se aparta para que usted lo mire. Lo que anotó y aún no intercambió también se aparta.</translation>
    </message>
    <message>
        <source>Why, for the record; may stay empty</source>
        <translation>Por qué, para la bitácora; puede quedar vacío</translation>
    </message>
    <message>
        <source>Revoke %1</source>
        <comment>device</comment>
        <translation>Revocar %1</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>dejarlo como está</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>Draw on the photo</source>
        <translation>Dibujar sobre la foto</translation>
    </message>
    <message>
        <source>lines are kept beside the photo, which stays as it is</source>
        <translation>las líneas se guardan junto a la foto, que queda como está</translation>
    </message>
    <message>
        <source>No finding with a photo is open.</source>
        <translation>No hay ningún hallazgo abierto con foto.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Volver al hallazgo</translation>
    </message>
    <message>
        <source>This is its small picture: the photo itself is on another device.</source>
        <translation>Esta es su imagen pequeña: la foto misma está en otro dispositivo.</translation>
    </message>
    <message>
        <source>ask for the photo in full</source>
        <translation>pedir la foto completa</translation>
    </message>
</context>
<context>
    <name>DrawTools</name>
    <message>
        <source>Now touch the rim.</source>
        <translation>Ahora toque el borde.</translation>
    </message>
    <message>
        <source>Touch the middle, then the rim; or drag.</source>
        <translation>Toque el centro y luego el borde; o arrastre.</translation>
    </message>
    <message>
        <source>Now touch what it points at.</source>
        <translation>Ahora toque lo que señala.</translation>
    </message>
    <message>
        <source>Touch the tail, then what it points at; or drag.</source>
        <translation>Toque la cola y luego lo que señala; o arrastre.</translation>
    </message>
    <message>
        <source>Now touch the other end.</source>
        <translation>Ahora toque el otro extremo.</translation>
    </message>
    <message>
        <source>Touch one end, then the other; or drag.</source>
        <translation>Toque un extremo y luego el otro; o arrastre.</translation>
    </message>
    <message>
        <source>circle</source>
        <comment>tool</comment>
        <translation>círculo</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>tool</comment>
        <translation>flecha</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>tool</comment>
        <translation>regla</translation>
    </message>
    <message>
        <source>Length, if known; left empty it is told from the first ruler</source>
        <translation>Longitud, si se conoce; vacía, se calcula con la primera regla</translation>
    </message>
    <message>
        <source>Known length, such as that of a tape or a rivet head</source>
        <translation>Longitud conocida, como la de una cinta o de la cabeza de un remache</translation>
    </message>
    <message>
        <source>such as 120 mm or 4 3/4 in</source>
        <translation>por ejemplo 120 mm o 4 3/4 in</translation>
    </message>
    <message>
        <source>erase last</source>
        <comment>line on a photo</comment>
        <translation>borrar la última</translation>
    </message>
    <message>
        <source>erase all</source>
        <comment>lines on a photo</comment>
        <translation>borrar todas</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>deshacer</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>about %1</source>
        <comment>a length told by ratio</comment>
        <translation>unos %1</translation>
    </message>
</context>
<context>
    <name>DrawnLines</name>
    <message>
        <source>circle</source>
        <comment>drawn on a photo</comment>
        <translation>círculo</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>drawn on a photo</comment>
        <translation>flecha</translation>
    </message>
    <message>
        <source>ruler, %1</source>
        <comment>drawn on a photo, length</comment>
        <translation>regla, %1</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>drawn on a photo</comment>
        <translation>regla</translation>
    </message>
</context>
<context>
    <name>DueFilters</name>
    <message>
        <source>all of them</source>
        <comment>due points</comment>
        <translation>todos</translation>
    </message>
    <message>
        <source>past due</source>
        <translation>vencidos</translation>
    </message>
    <message>
        <source>within a month</source>
        <translation>en un mes</translation>
    </message>
    <message>
        <source>within a season</source>
        <translation>en una temporada</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>por fecha</translation>
    </message>
    <message>
        <source>by concern</source>
        <translation>por preocupación</translation>
    </message>
    <message>
        <source>every zone</source>
        <translation>todas las zonas</translation>
    </message>
    <message>
        <source>showing %1, %2, %3</source>
        <comment>which points, zone, order</comment>
        <translation>se ven: %1, %2, %3</translation>
    </message>
    <message>
        <source>%1; folds the choices away</source>
        <translation>%1; pliega las opciones</translation>
    </message>
    <message>
        <source>%1; unfolds the choices</source>
        <translation>%1; despliega las opciones</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Cuáles</translation>
    </message>
    <message>
        <source>In which order</source>
        <translation>En qué orden</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Due</source>
        <comment>heading: what is due when</comment>
        <translation>Plazos</translation>
    </message>
    <message>
        <source>Nothing is worked out yet: the bands come with the first walk.</source>
        <translation>Todavía no hay nada calculado: las bandas llegan con la primera ronda.</translation>
    </message>
    <message>
        <source>what to buy for it</source>
        <translation>qué comprar para ello</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>y si va a otro lugar</translation>
    </message>
    <message>
        <source>Line: early to late. Ring: likely. Heavy stroke: time to look. Faint upright: by the catalogue alone. Long upright: today.</source>
        <translation>Línea: de temprano a tarde. Anillo: probable. Trazo grueso: hora de mirar. Vertical tenue: solo por el catálogo. Vertical larga: hoy.</translation>
    </message>
    <message>
        <source>Nothing here for that choice.</source>
        <translation>Nada aquí con esa elección.</translation>
    </message>
    <message>
        <source>Nobody has looked at this rig yet, so everything is due at once. Begin with a first look of a quarter of an hour; dates follow from what is marked.</source>
        <translation>Nadie ha mirado aún este vehículo, por eso todo toca a la vez. Empiece con una primera mirada de un cuarto de hora; las fechas siguen de lo que se marque.</translation>
    </message>
    <message>
        <source>Begin with a first look</source>
        <translation>Empezar con una primera mirada</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>cómo fue</translation>
    </message>
</context>
<context>
    <name>DueRow</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>temprano %1, probable %2, tarde %3</translation>
    </message>
</context>
<context>
    <name>EmergencyCard</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>volver</translation>
    </message>
</context>
<context>
    <name>ErrorLine</name>
    <message>
        <source>read</source>
        <comment>puts a message away</comment>
        <translation>leído</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>Not understood: %1</source>
        <translation>No se entendió: %1</translation>
    </message>
    <message>
        <source>Check what was typed, and try once more.</source>
        <translation>Revise lo escrito y pruebe otra vez.</translation>
    </message>
    <message>
        <source>Beyond what can be true: %1</source>
        <translation>Más allá de lo posible: %1</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Revise el número y su unidad.</translation>
    </message>
    <message>
        <source>This version cannot do that: %1</source>
        <translation>Esta versión no puede hacer eso: %1</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Instale la versión más nueva o use otro archivo.</translation>
    </message>
    <message>
        <source>Not found: %1</source>
        <translation>No se encontró: %1</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>Puede que se haya movido. Elíjalo otra vez.</translation>
    </message>
    <message>
        <source>Something else has it: %1</source>
        <translation>Otro lo está usando: %1</translation>
    </message>
    <message>
        <source>Close other programs that use this logbook, then try once more.</source>
        <translation>Cierre los otros programas que usan esta bitácora y pruebe otra vez.</translation>
    </message>
    <message>
        <source>The disk refused: %1</source>
        <translation>El disco se negó: %1</translation>
    </message>
    <message>
        <source>Nothing was lost before this. See that the disk is there, has room and may be written to.</source>
        <translation>No se perdió nada anterior. Vea que el disco esté, tenga lugar y se pueda escribir.</translation>
    </message>
    <message>
        <source>Damaged: %1</source>
        <translation>Dañado: %1</translation>
    </message>
    <message>
        <source>Stop writing to it and open a backup.</source>
        <translation>No escriba más en él y abra una copia.</translation>
    </message>
    <message>
        <source>No connection: %1</source>
        <translation>Sin conexión: %1</translation>
    </message>
    <message>
        <source>Try once more where there is a network.</source>
        <translation>Pruebe otra vez donde haya red.</translation>
    </message>
    <message>
        <source>How much it is was not understood.</source>
        <translation>No se entendió cuánto es.</translation>
    </message>
    <message>
        <source>Write for example 14 mm, 1/2 in or 3.</source>
        <translation>Escriba por ejemplo 14 mm, 1/2 in o 3.</translation>
    </message>
    <message>
        <source>A reading was not understood: %1</source>
        <translation>No se entendió una medida: %1</translation>
    </message>
    <message>
        <source>Write the number with its unit, for example 380 kPa or 55 psi.</source>
        <translation>Escriba el número con su unidad, por ejemplo 380 kPa o 55 psi.</translation>
    </message>
    <message>
        <source>It is not said what is wrong.</source>
        <translation>Falta decir qué está mal.</translation>
    </message>
    <message>
        <source>Choose what it looks like.</source>
        <translation>Elija qué parece.</translation>
    </message>
    <message>
        <source>It is not said how bad it is.</source>
        <translation>Falta decir cuán grave es.</translation>
    </message>
    <message>
        <source>Choose one of the five grades.</source>
        <translation>Elija uno de los cinco grados.</translation>
    </message>
    <message>
        <source>It is not said why it could not be looked at.</source>
        <translation>Falta decir por qué no se pudo revisar.</translation>
    </message>
    <message>
        <source>Choose a reason.</source>
        <translation>Elija un motivo.</translation>
    </message>
    <message>
        <source>The spot is not on this rig.</source>
        <translation>El lugar no está en este vehículo.</translation>
    </message>
    <message>
        <source>Point at the drawing once more.</source>
        <translation>Toque el dibujo otra vez.</translation>
    </message>
</context>
<context>
    <name>EverList</name>
    <message>
        <source>Nothing was ever found at a place.</source>
        <translation>Nunca se encontró nada en un lugar.</translation>
    </message>
    <message>
        <source>Found ever, by place: the number in the shape says how often. Its edge is dashed where nothing is open. A hand&apos;s breadth counts as one place.</source>
        <translation>Lo encontrado desde siempre, por lugar: el número en la forma dice cuántas veces. Su borde va a trazos donde no queda nada abierto. Menos de un palmo cuenta como un mismo lugar.</translation>
    </message>
</context>
<context>
    <name>EverPlaces</name>
    <message>
        <source>once, on %1</source>
        <comment>date</comment>
        <translation>una vez, el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s), first on %1, last on %2</source>
        <comment>dates</comment>
        <translation>
            <numerusform>%n vez, primero el %1, por último el %2</numerusform>
            <numerusform>%n veces, primero el %1, por último el %2</numerusform>
        </translation>
    </message>
    <message>
        <source>last mend on %1</source>
        <comment>date</comment>
        <translation>última reparación el %1</translation>
    </message>
    <message>
        <source>no mend written</source>
        <translation>ninguna reparación escrita</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>when found; when mended</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>; nothing open</source>
        <comment>at a place</comment>
        <translation>; nada abierto</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s) written without a place</source>
        <translation>
            <numerusform>%n hallazgo escrito sin lugar</numerusform>
            <numerusform>%n hallazgos escritos sin lugar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EverRow</name>
    <message>
        <source>place %1: %2, %3, %4</source>
        <comment>number, where, what, how often and when</comment>
        <translation>lugar %1: %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>ExchangeBlock</name>
    <message>
        <source>Exchanging with %1</source>
        <comment>store</comment>
        <translation>Intercambiando con %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>what came and went until now stays</source>
        <translation>lo que llegó y salió hasta ahora se queda</translation>
    </message>
    <message>
        <source>Stopped. What came and went until then stays; exchange again to go on.</source>
        <translation>Parado. Lo que llegó y salió hasta entonces se queda; intercambie de nuevo para seguir.</translation>
    </message>
</context>
<context>
    <name>FileWord</name>
    <message>
        <source>photo from a file</source>
        <translation>foto de un archivo</translation>
    </message>
    <message>
        <source>Photos of the finding</source>
        <translation>Fotos del hallazgo</translation>
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
        <translation>No hay hallazgos abiertos. Lo que no se revisó no se conoce.</translation>
    </message>
    <message numerus="yes">
        <source>%n open finding(s)</source>
        <comment>heading over the list</comment>
        <translation>
            <numerusform>%n hallazgo abierto</numerusform>
            <numerusform>%n hallazgos abiertos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>finding %1: %2, %3, %4</source>
        <comment>number, what, how bad, call</comment>
        <translation>hallazgo %1: %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>FindingSheet</name>
    <message>
        <source>or</source>
        <translation>o</translation>
    </message>
    <message>
        <source>something new here</source>
        <translation>algo nuevo aquí</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <comment>who, where on earth</comment>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>first tell whether it is one of these</source>
        <translation>primero diga si es uno de estos</translation>
    </message>
    <message>
        <source>first tell how bad it is now</source>
        <translation>primero diga cuán grave es ahora</translation>
    </message>
    <message>
        <source>Write down: pass</source>
        <translation>Anotar: pasa</translation>
    </message>
</context>
<context>
    <name>FinishPage</name>
    <message>
        <source>End of the walk</source>
        <translation>Fin de la ronda</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Parar aquí</translation>
    </message>
    <message>
        <source>lines with an attention</source>
        <translation>líneas con atención</translation>
    </message>
    <message>
        <source>lines passed</source>
        <translation>líneas que pasan</translation>
    </message>
    <message>
        <source>lines not fitted</source>
        <translation>líneas que no lleva</translation>
    </message>
    <message>
        <source>lines without a look</source>
        <translation>líneas sin revisar</translation>
    </message>
    <message>
        <source>Every line got a mark. This says what was looked at, not that nothing will fail.</source>
        <translation>Cada línea tiene su marca. Esto dice qué se revisó, no que nada vaya a fallar.</translation>
    </message>
    <message>
        <source>Not looked at; press one to go there:</source>
        <translation>Sin revisar; toque una para ir allí:</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Dejarla abierta</translation>
    </message>
    <message>
        <source>it goes on at the same line</source>
        <translation>sigue en la misma línea</translation>
    </message>
    <message>
        <source>Finish the walk</source>
        <translation>Terminar la ronda</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) stay without a look</source>
        <translation>
            <numerusform>%n línea queda sin revisar</numerusform>
            <numerusform>%n líneas quedan sin revisar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FirstLook</name>
    <message>
        <source>First look</source>
        <comment>kind of walk</comment>
        <translation>Primera mirada</translation>
    </message>
    <message>
        <source>What would do most harm if it were wrong, out of all this rig has. The rest can follow in stretches.</source>
        <translation>Lo que haría más daño si estuviera mal, de todo lo que tiene este vehículo. Lo demás puede seguir por partes.</translation>
    </message>
</context>
<context>
    <name>FittedBlock</name>
    <message>
        <source>A wheel was fitted</source>
        <translation>Se montó una rueda</translation>
    </message>
    <message>
        <source>Which wheel</source>
        <translation>Qué rueda</translation>
    </message>
    <message>
        <source>Write down the fitting</source>
        <translation>Anotar el montaje</translation>
    </message>
    <message>
        <source>its nuts come due after 10, 25 and 50 to 100 miles, until looked at</source>
        <translation>sus tuercas tocan tras 10, 25 y 50 a 100 millas, hasta que se revisen</translation>
    </message>
    <message>
        <source>its nuts come due after 16, 40 and 80 to 160 km, until looked at</source>
        <translation>sus tuercas tocan tras 16, 40 y 80 a 160 km, hasta que se revisen</translation>
    </message>
</context>
<context>
    <name>Glyph</name>
    <message>
        <source>not yet looked at</source>
        <comment>state of a point</comment>
        <translation>todavía sin revisar</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>state of a point</comment>
        <translation>pasa</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>vigilar</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>reparar pronto</translation>
    </message>
    <message>
        <source>hold</source>
        <comment>call</comment>
        <translation>retención</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>state of a point</comment>
        <translation>no se pudo revisar</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>state of a point</comment>
        <translation>no lo lleva</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>state of a point</comment>
        <translation>atención</translation>
    </message>
</context>
<context>
    <name>GradeChoice</name>
    <message>
        <source>How bad</source>
        <translation>Cuán grave</translation>
    </message>
    <message>
        <source>grade %1: %2</source>
        <comment>how bad, in words</comment>
        <translation>grado %1: %2</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>No finding is open.</source>
        <translation>No hay hallazgos abiertos.</translation>
    </message>
    <message>
        <source>mended %1</source>
        <comment>date</comment>
        <translation>reparado el %1</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>One begins with attention on a line of a walk, and stays here until a mend closes it.</source>
        <translation>Empieza con una atención en una línea de una ronda y queda aquí hasta que una reparación lo cierra.</translation>
    </message>
    <message>
        <source>first seen %1: on the map</source>
        <comment>where</comment>
        <translation>visto primero %1: en el mapa</translation>
    </message>
</context>
<context>
    <name>HoldRow</name>
    <message>
        <source>the finding</source>
        <translation>el hallazgo</translation>
    </message>
    <message>
        <source>move it once on one&apos;s own decision …</source>
        <translation>moverlo una vez por decisión propia …</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>a track, GPX or NMEA</source>
        <translation>un recorrido, GPX o NMEA</translation>
    </message>
    <message>
        <source>a log of shaking, CSV</source>
        <translation>un registro de sacudidas, CSV</translation>
    </message>
    <message>
        <source>weather, CSV or EPW</source>
        <translation>el tiempo, CSV o EPW</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Traer un archivo</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>The road, if you know it</source>
        <translation>El camino, si se sabe</translation>
    </message>
    <message>
        <source>There is no trip yet: take its track in first.</source>
        <translation>Todavía no hay ningún viaje: traiga primero su recorrido.</translation>
    </message>
    <message>
        <source>Of which trip</source>
        <translation>De qué viaje</translation>
    </message>
    <message>
        <source>Where the sensor was</source>
        <translation>Dónde estaba el sensor</translation>
    </message>
    <message>
        <source>fixed to the rig</source>
        <translation>fijo en el vehículo</translation>
    </message>
    <message>
        <source>in the tow vehicle</source>
        <translation>en el vehículo tractor</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>where a sensor was</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>A log without speeds needs the drive&apos;s track, or the trip&apos;s mean speed is taken.</source>
        <translation>Un registro sin velocidades necesita el recorrido del viaje; si no, se toma la velocidad media del viaje.</translation>
    </message>
    <message>
        <source>Speeds from %1.</source>
        <comment>file name</comment>
        <translation>Velocidades de %1.</translation>
    </message>
    <message>
        <source>track that tells the speed</source>
        <translation>recorrido que dice la velocidad</translation>
    </message>
    <message>
        <source>Tracks (*.gpx *.nmea *.log *.txt)</source>
        <translation>Recorridos (*.gpx *.nmea *.log *.txt)</translation>
    </message>
    <message>
        <source>Where it was measured, unless the file says so</source>
        <translation>Dónde se midió, si el archivo no lo dice</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>en otro lugar</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Latitud, longitud en grados</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>por ejemplo -44.27, 170.10 o 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Year, for a file of a typical year</source>
        <translation>Año, para un archivo de un año típico</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Elegir el archivo</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.epw)</source>
        <translation>Tablas (*.csv *.txt *.epw)</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <comment>file name</comment>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>%1 read; working it out</source>
        <comment>bytes</comment>
        <translation>%1 leídos; se está calculando</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>nothing of it is written</source>
        <translation>no se escribe nada de él</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the file was written.</source>
        <translation>Parado. No se escribió nada del archivo.</translation>
    </message>
    <message>
        <source>The reader says: %1</source>
        <comment>in English</comment>
        <translation>El lector dice (en inglés): %1</translation>
    </message>
    <message>
        <source>The file stays where it is; it is read on this device, and nothing is sent anywhere.</source>
        <translation>El archivo se queda donde está; se lee en este aparato y no se envía nada a ninguna parte.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Say what is asked for above, and take it in once more.</source>
        <translation>Diga lo que se pregunta arriba y tráigalo otra vez.</translation>
    </message>
    <message>
        <source>Put it right in the file, or export it once more from where it came from.</source>
        <translation>Corríjalo en el archivo o expórtelo otra vez desde donde vino.</translation>
    </message>
    <message>
        <source>Check the number and its unit, or export the file in smaller parts.</source>
        <translation>Revise el número y su unidad, o exporte el archivo en partes más pequeñas.</translation>
    </message>
    <message>
        <source>It is in the logbook already: nothing has to be done.</source>
        <translation>Ya está en la bitácora: no hay que hacer nada.</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>Puede que se haya movido. Elíjalo otra vez.</translation>
    </message>
    <message>
        <source>See that the disk is there, has room and may be read.</source>
        <translation>Vea que el disco esté, tenga sitio y se pueda leer.</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Instale la versión más nueva o use otro archivo.</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>línea %1, columna %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of weather were added.</source>
        <translation>
            <numerusform>Se agregó %n día de tiempo.</numerusform>
            <numerusform>Se agregaron %n días de tiempo.</numerusform>
        </translation>
    </message>
    <message>
        <source>From %1 to %2, at %3.</source>
        <comment>dates, place</comment>
        <translation>Del %1 al %2, en %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) were left out.</source>
        <translation>
            <numerusform>Se dejó fuera %n lectura.</numerusform>
            <numerusform>Se dejaron fuera %n lecturas.</numerusform>
        </translation>
    </message>
    <message>
        <source>The road of the trip was measured over %1: middle %2 m/km, roughest tenth from %3 m/km on.</source>
        <comment>distance, roughness</comment>
        <translation>El camino del viaje se midió a lo largo de %1: mitad %2 m/km, décimo más áspero desde %3 m/km.</translation>
    </message>
    <message>
        <source>Nothing told the speed: the mean of the trip was taken.</source>
        <translation>Nada dijo la velocidad: se tomó la media del viaje.</translation>
    </message>
    <message>
        <source>The sensor was not on the rig: what it felt is not what the rig felt.</source>
        <translation>El sensor no iba en el vehículo: lo que sintió no es lo que sintió el vehículo.</translation>
    </message>
    <message>
        <source>%1 on %2 was added.</source>
        <comment>distance, date</comment>
        <translation>Se agregó %1 el %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n position(s) were left out.</source>
        <translation>
            <numerusform>Se dejó fuera %n posición.</numerusform>
            <numerusform>Se dejaron fuera %n posiciones.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) in it.</source>
        <translation>
            <numerusform>%n hueco en él.</numerusform>
            <numerusform>%n huecos en él.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is there already.</source>
        <translation>%1 ya está.</translation>
    </message>
    <message>
        <source>Something is missing for %1.</source>
        <translation>Falta algo para %1.</translation>
    </message>
    <message>
        <source>%1 could not be taken in. Nothing was written.</source>
        <translation>No se pudo traer %1. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 of %2 MB</source>
        <translation>%1 de %2 MB</translation>
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
        <translation>Participar en un vehículo</translation>
    </message>
    <message>
        <source>Words of the owner&apos;s device</source>
        <translation>Palabras del dispositivo del propietario</translation>
    </message>
    <message>
        <source>What this device asks to be; the owner decides</source>
        <translation>Qué pide ser este dispositivo; decide el propietario</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Responder</translation>
    </message>
    <message>
        <source>Once the owner has enrolled this device and exchanged, exchange with the same store: the rig comes from there.</source>
        <translation>Cuando el propietario haya inscrito este dispositivo e intercambiado, intercambie con el mismo almacén: el vehículo llega de allí.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>A los almacenes</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>empezar de nuevo</translation>
    </message>
    <message>
        <source>The owner&apos;s device shows a code under share. Read its picture by camera, or type or paste its words.</source>
        <translation>El dispositivo del propietario muestra un código al compartir. Lea su imagen con la cámara, o escriba o pegue sus palabras.</translation>
    </message>
    <message>
        <source>every device is lost, the words on paper are left</source>
        <translation>se perdió todo dispositivo, quedan las palabras en papel</translation>
    </message>
    <message>
        <source>The owner reads the picture below, or types its words, and sees six digits too. They must be these.</source>
        <translation>El propietario lee la imagen de abajo, o escribe sus palabras, y ve también seis cifras. Deben ser estas.</translation>
    </message>
</context>
<context>
    <name>KeepBlock</name>
    <message>
        <source>Where it was read</source>
        <translation>Dónde se leyó</translation>
    </message>
    <message>
        <source>Keep as reading</source>
        <translation>Guardar como lectura</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>erase</source>
        <comment>key of the keypad</comment>
        <translation>borrar</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>key of the keypad</comment>
        <translation>vaciar</translation>
    </message>
    <message>
        <source>next</source>
        <comment>key of the keypad</comment>
        <translation>sigue</translation>
    </message>
    <message>
        <source>done</source>
        <comment>key of the keypad</comment>
        <translation>hecho</translation>
    </message>
    <message>
        <source>take away the last figure</source>
        <translation>quitar la última cifra</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>coma decimal</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>punto decimal</translation>
    </message>
    <message>
        <source>above or below zero</source>
        <translation>sobre o bajo cero</translation>
    </message>
    <message>
        <source>fraction bar</source>
        <translation>barra de fracción</translation>
    </message>
    <message>
        <source>take away all figures</source>
        <translation>quitar todas las cifras</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>lectura siguiente</translation>
    </message>
    <message>
        <source>done with the readings</source>
        <translation>lecturas terminadas</translation>
    </message>
    <message>
        <source>keypad for %1</source>
        <comment>what is read</comment>
        <translation>teclado para %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <comment>unit</comment>
        <translation>en %1</translation>
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
        <translation>la última vez</translation>
    </message>
    <message>
        <source>at a glance</source>
        <comment>how it was looked at</comment>
        <translation>a simple vista</translation>
    </message>
    <message>
        <source>measured</source>
        <comment>how it was looked at</comment>
        <translation>medido</translation>
    </message>
    <message>
        <source>looked</source>
        <comment>how it was looked at</comment>
        <translation>revisado</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>what a point got</comment>
        <translation>pasa</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>what a point got</comment>
        <translation>atención</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>what a point got</comment>
        <translation>no lo lleva</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>what a point got</comment>
        <translation>no se pudo revisar</translation>
    </message>
    <message>
        <source>last: %1</source>
        <comment>a mark: how, what, when, who</comment>
        <translation>última vez: %1</translation>
    </message>
</context>
<context>
    <name>LegEntry</name>
    <message>
        <source>From, year-month-day</source>
        <translation>Desde, año-mes-día</translation>
    </message>
    <message>
        <source>Until, the last day</source>
        <translation>Hasta, el último día</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Dónde está</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>en otro lugar</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Latitud, longitud en grados</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>por ejemplo -44.27, 170.10 o 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Under what</source>
        <translation>Bajo qué</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>a la intemperie</translation>
    </message>
    <message>
        <source>under a roof or cover</source>
        <translation>bajo techo o funda</translation>
    </message>
    <message>
        <source>Driven in that time; empty for none</source>
        <translation>Rodado en ese tiempo; vacío si nada</translation>
    </message>
    <message>
        <source>such as 750 mi</source>
        <translation>por ejemplo 750 mi</translation>
    </message>
    <message>
        <source>such as 1200 km</source>
        <translation>por ejemplo 1200 km</translation>
    </message>
    <message>
        <source>On which road</source>
        <translation>Por qué camino</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Calcularlo</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>no se escribe nada</translation>
    </message>
</context>
<context>
    <name>LegForm</name>
    <message>
        <source>Not a date: %1</source>
        <translation>No es una fecha: %1</translation>
    </message>
    <message>
        <source>Write year, month and day, such as 2027-01-15.</source>
        <translation>Escriba año, mes y día, por ejemplo 2027-01-15.</translation>
    </message>
    <message>
        <source>Not a place on earth: %1</source>
        <translation>No es un lugar de la tierra: %1</translation>
    </message>
    <message>
        <source>Choose one, or write latitude and longitude in degrees, such as -44.27, 170.10.</source>
        <translation>Elija uno, o escriba latitud y longitud en grados, por ejemplo -44.27, 170.10.</translation>
    </message>
    <message>
        <source>Not understood: %1</source>
        <translation>No se entendió: %1</translation>
    </message>
    <message>
        <source>Write it as 1200 km or 750 mi.</source>
        <translation>Escríbalo como 1200 km o 750 mi.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Termina antes de empezar.</translation>
    </message>
    <message>
        <source>Give the last day there, at or after the first.</source>
        <translation>Dé el último día allí, el primero o después.</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>road</comment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>smooth</source>
        <comment>road</comment>
        <translation>liso</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>road</comment>
        <translation>roto</translation>
    </message>
    <message>
        <source>gravel</source>
        <comment>road</comment>
        <translation>ripio</translation>
    </message>
    <message>
        <source>washboard</source>
        <comment>road</comment>
        <translation>serrucho</translation>
    </message>
    <message>
        <source>track</source>
        <comment>road</comment>
        <translation>huella</translation>
    </message>
</context>
<context>
    <name>LinesPage</name>
    <message>
        <source>all</source>
        <comment>lines of a walk</comment>
        <translation>todas</translation>
    </message>
    <message>
        <source>left, %1</source>
        <comment>lines without a mark, how many</comment>
        <translation>faltan, %1</translation>
    </message>
    <message>
        <source>attention, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>atención, %1</translation>
    </message>
    <message>
        <source>pass, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>pasa, %1</translation>
    </message>
    <message>
        <source>could not look, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>no se pudo revisar, %1</translation>
    </message>
    <message>
        <source>not fitted, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>no lo lleva, %1</translation>
    </message>
    <message>
        <source>every stand</source>
        <translation>todos los puestos</translation>
    </message>
    <message>
        <source>Search the lines</source>
        <translation>Buscar en las líneas</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>only one stand</source>
        <translation>solo un puesto</translation>
    </message>
    <message>
        <source>No line of this walk is like that.</source>
        <translation>Ninguna línea de esta ronda es así.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n línea</numerusform>
            <numerusform>%n líneas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LogbookHead</name>
    <message>
        <source>Logbook</source>
        <translation>Bitácora</translation>
    </message>
    <message>
        <source>exchange</source>
        <comment>with other devices</comment>
        <translation>intercambiar</translation>
    </message>
    <message>
        <source>exchange: %1</source>
        <comment>what waits</comment>
        <translation>intercambiar: %1</translation>
    </message>
    <message>
        <source>search</source>
        <translation>buscar</translation>
    </message>
    <message>
        <source>reports</source>
        <translation>informes</translation>
    </message>
    <message>
        <source>walks</source>
        <translation>rondas</translation>
    </message>
    <message>
        <source>trips</source>
        <translation>viajes</translation>
    </message>
    <message>
        <source>mends</source>
        <translation>arreglos</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>cómo fue</translation>
    </message>
    <message>
        <source>map</source>
        <translation>mapa</translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>No walk yet.</source>
        <translation>Todavía ninguna ronda.</translation>
    </message>
    <message>
        <source>No trip yet.</source>
        <translation>Todavía ningún viaje.</translation>
    </message>
    <message>
        <source>No mend yet.</source>
        <translation>Todavía ningún arreglo.</translation>
    </message>
    <message>
        <source>No photo yet.</source>
        <translation>Todavía ninguna foto.</translation>
    </message>
    <message>
        <source>Compare these two</source>
        <translation>Comparar estas dos</translation>
    </message>
    <message>
        <source>Compare the last two</source>
        <translation>Comparar las dos últimas</translation>
    </message>
    <message>
        <source>or press one more</source>
        <translation>o toque una más</translation>
    </message>
    <message>
        <source>or press two of them</source>
        <translation>o toque dos de ellas</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Traer un archivo</translation>
    </message>
    <message>
        <source>a track, a log of shaking, weather</source>
        <translation>un recorrido, sacudidas, el tiempo</translation>
    </message>
    <message>
        <source>take back: %1</source>
        <comment>what was written last</comment>
        <translation>deshacer: %1</translation>
    </message>
</context>
<context>
    <name>LookEntry</name>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, por %2</translation>
    </message>
</context>
<context>
    <name>MapChoices</name>
    <message>
        <source>a finding by its call: hold</source>
        <translation>un hallazgo según su aviso: retención</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>reparar pronto</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>vigilar</translation>
    </message>
    <message>
        <source>a finding that is mended or gone</source>
        <translation>un hallazgo reparado o desaparecido</translation>
    </message>
    <message>
        <source>a stay</source>
        <translation>una estancia</translation>
    </message>
    <message>
        <source>the end of a trip</source>
        <translation>el final de un viaje</translation>
    </message>
    <message>
        <source>A number says how many lie there. A broken line is a worse road. Press a line for its trip, bare land to bring it to the middle.</source>
        <translation>Un número dice cuántos hay allí. Una línea discontinua es un camino peor. Pulse una línea para ver su viaje, o el terreno para llevarlo al centro.</translation>
    </message>
</context>
<context>
    <name>MapMembers</name>
    <message numerus="yes">
        <source>%n thing(s) here</source>
        <comment>on the map</comment>
        <translation>
            <numerusform>%n cosa aquí</numerusform>
            <numerusform>%n cosas aquí</numerusform>
        </translation>
    </message>
    <message>
        <source>look closer</source>
        <comment>at the map</comment>
        <translation>ver más de cerca</translation>
    </message>
    <message>
        <source>close</source>
        <comment>a list on the map</comment>
        <translation>cerrar</translation>
    </message>
</context>
<context>
    <name>MapPage</name>
    <message>
        <source>Map</source>
        <translation>Mapa</translation>
    </message>
    <message>
        <source>close</source>
        <comment>what is shown</comment>
        <translation>cerrar</translation>
    </message>
    <message>
        <source>what is shown</source>
        <comment>on the map</comment>
        <translation>qué se muestra</translation>
    </message>
    <message>
        <source>Nothing of this rig has a place yet.</source>
        <translation>Nada de este vehículo tiene aún un lugar.</translation>
    </message>
    <message>
        <source>A track from a phone or a receiver draws its trip here. A stay shows where the rig stood. A finding lies where it was looked at, if the walk was done with the position on (settings).</source>
        <translation>Un recorrido de un teléfono o un receptor dibuja aquí su viaje. Una estancia muestra dónde estuvo el vehículo. Un hallazgo está donde se miró, si la vuelta se hizo con la posición activada (ajustes).</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Traer un recorrido</translation>
    </message>
    <message>
        <source>Coast: Natural Earth. Names: GeoNames, CC BY 4.0.</source>
        <translation>Costa: Natural Earth. Nombres: GeoNames, CC BY 4.0.</translation>
    </message>
</context>
<context>
    <name>MapPaper</name>
    <message>
        <source>nearer</source>
        <comment>map</comment>
        <translation>más cerca</translation>
    </message>
    <message>
        <source>further away</source>
        <comment>map</comment>
        <translation>más lejos</translation>
    </message>
    <message>
        <source>all</source>
        <comment>everything on the map</comment>
        <translation>todo</translation>
    </message>
    <message>
        <source>show everything</source>
        <comment>on the map</comment>
        <translation>mostrar todo</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>A trip</source>
        <translation>Un viaje</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates of a stay</comment>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date of a stay that goes on</comment>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>A stay</source>
        <translation>Una estancia</translation>
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
            <numerusform>%n cosa aquí, primero: %1</numerusform>
            <numerusform>%n cosas aquí, primero: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Map, north up; its middle is %1.</source>
        <comment>where</comment>
        <translation>Mapa, norte arriba; su centro está %1.</translation>
    </message>
    <message>
        <source>%1 across.</source>
        <comment>distance</comment>
        <translation>%1 de ancho.</translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>Aquí no se sabe dónde está el mar.</translation>
    </message>
    <message>
        <source>findings</source>
        <comment>on the map</comment>
        <translation>hallazgos</translation>
    </message>
    <message>
        <source>mended ones too</source>
        <comment>findings on the map</comment>
        <translation>también los reparados</translation>
    </message>
    <message>
        <source>trips</source>
        <comment>on the map</comment>
        <translation>viajes</translation>
    </message>
    <message>
        <source>stays</source>
        <comment>on the map</comment>
        <translation>estancias</translation>
    </message>
</context>
<context>
    <name>MarkBar</name>
    <message>
        <source>Pass</source>
        <comment>mark</comment>
        <translation>Pasa</translation>
    </message>
    <message>
        <source>Attention</source>
        <comment>mark</comment>
        <translation>Atención</translation>
    </message>
</context>
<context>
    <name>MendForm</name>
    <message>
        <source>Write down a mend</source>
        <translation>Anotar un arreglo</translation>
    </message>
    <message>
        <source>What kind of work</source>
        <translation>Qué clase de trabajo</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Brakes, gas, mains and tires: by licensed people, and to the maker&apos;s figures.</source>
        <translation>Frenos, gas, red eléctrica y neumáticos: personal con licencia y las cifras del fabricante.</translation>
    </message>
    <message>
        <source>Write down the mend</source>
        <translation>Anotar el arreglo</translation>
    </message>
    <message>
        <source>first tell what kind of work</source>
        <translation>primero diga qué clase de trabajo</translation>
    </message>
    <message>
        <source>With what and how many</source>
        <translation>Con qué y cuánto</translation>
    </message>
    <message>
        <source>such as lap sealant, 2 cartridges; 3 x rivet 3/16 in</source>
        <translation>por ejemplo sellador, 2 cartuchos; 3 x remache 3/16 in</translation>
    </message>
</context>
<context>
    <name>MoreWord</name>
    <message>
        <source>further up</source>
        <comment>turn the page without a swipe</comment>
        <translation>más arriba</translation>
    </message>
    <message>
        <source>further down</source>
        <comment>turn the page without a swipe</comment>
        <translation>más abajo</translation>
    </message>
</context>
<context>
    <name>NewFinding</name>
    <message>
        <source>first tell which of these it is</source>
        <translation>primero diga cuál de estos es</translation>
    </message>
    <message>
        <source>first tell what it is and how bad</source>
        <translation>primero diga qué es y cuán grave</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>of the points of a line</comment>
        <translation>Cuál</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>por ejemplo 60 mm, o 2 de 8</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>OfferedFinding</name>
    <message>
        <source>mended, it holds</source>
        <translation>reparado, y aguanta</translation>
    </message>
    <message>
        <source>there again</source>
        <translation>está otra vez</translation>
    </message>
    <message>
        <source>still there, the same</source>
        <translation>sigue, igual</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>peor</translation>
    </message>
    <message>
        <source>better</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>Finding %1, mended: now</source>
        <comment>number</comment>
        <translation>Hallazgo %1, reparado: ahora</translation>
    </message>
    <message>
        <source>Finding %1 now</source>
        <comment>number</comment>
        <translation>Hallazgo %1 ahora</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>por ejemplo 60 mm, o 2 de 8</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>OpenFinding</name>
    <message>
        <source>Finding %1 since %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Hallazgo %1 desde el %2: %3</translation>
    </message>
    <message>
        <source>Finding %1, mended %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Hallazgo %1, reparado el %2: %3</translation>
    </message>
    <message>
        <source>A pass here confirms the mend.</source>
        <translation>Si aquí pasa, la reparación queda confirmada.</translation>
    </message>
</context>
<context>
    <name>PageFoot</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>volver</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>emergencia</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>A key on paper</source>
        <translation>Una clave en papel</translation>
    </message>
    <message>
        <source>24 words that own %1 when every device is lost. They are shown once and kept nowhere: write them down, on two papers if you can.</source>
        <comment>rig</comment>
        <translation>24 palabras que son dueñas de %1 cuando se pierde todo dispositivo. Se muestran una vez y no se guardan en ninguna parte: escríbalas, en dos papeles si puede.</translation>
    </message>
    <message>
        <source>Who has the words and reaches a store owns the logbook. Keep them as you keep the papers of the rig. A paper that was lost or seen is revoked like a device.</source>
        <translation>Quien tiene las palabras y llega a un almacén es dueño de la bitácora. Guárdelas como guarda los papeles del vehículo. Un papel perdido o visto se revoca como un dispositivo.</translation>
    </message>
    <message>
        <source>Show the words</source>
        <translation>Mostrar las palabras</translation>
    </message>
    <message>
        <source>only you look at the screen now</source>
        <translation>que ahora solo usted mire la pantalla</translation>
    </message>
    <message>
        <source>The key of %1</source>
        <comment>rig</comment>
        <translation>La clave de %1</translation>
    </message>
    <message>
        <source>The mark of the rig; not secret, it tells this rig from one that somebody made up</source>
        <translation>La marca del vehículo; no es secreta, distingue este vehículo de uno inventado por alguien</translation>
    </message>
    <message>
        <source>Exchange with a store now, so that the store knows this key.</source>
        <translation>Intercambie ahora con un almacén, para que el almacén conozca esta clave.</translation>
    </message>
    <message>
        <source>It is written down</source>
        <translation>Ya está escrito</translation>
    </message>
    <message>
        <source>the words are not shown again</source>
        <translation>las palabras no se muestran otra vez</translation>
    </message>
</context>
<context>
    <name>PhotoBoard</name>
    <message>
        <source>photo to draw on</source>
        <translation>foto sobre la que dibujar</translation>
    </message>
    <message>
        <source>photo to draw on: %1</source>
        <translation>foto sobre la que dibujar: %1</translation>
    </message>
</context>
<context>
    <name>PhotoChoice</name>
    <message>
        <source>Photos: none yet</source>
        <translation>Fotos: todavía ninguna</translation>
    </message>
    <message>
        <source>leave out</source>
        <comment>a photo</comment>
        <translation>quitar</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s); press one to draw on it</source>
        <translation>
            <numerusform>%n foto; tóquela para dibujar sobre ella</numerusform>
            <numerusform>%n fotos; toque una para dibujar sobre ella</numerusform>
        </translation>
    </message>
    <message>
        <source>number %1</source>
        <comment>photo</comment>
        <translation>número %1</translation>
    </message>
    <message>
        <source>take a photo</source>
        <translation>tomar una foto</translation>
    </message>
</context>
<context>
    <name>PhotoPair</name>
    <message>
        <source>then, %1</source>
        <comment>photo</comment>
        <translation>antes, %1</translation>
    </message>
    <message>
        <source>then</source>
        <comment>earlier walk</comment>
        <translation>antes</translation>
    </message>
    <message>
        <source>now, %1</source>
        <comment>photo</comment>
        <translation>ahora, %1</translation>
    </message>
    <message>
        <source>then, in its place</source>
        <translation>antes, en su lugar</translation>
    </message>
    <message>
        <source>now; press for then</source>
        <translation>ahora; toque para ver antes</translation>
    </message>
    <message>
        <source>now</source>
        <comment>later walk</comment>
        <translation>ahora</translation>
    </message>
    <message>
        <source>shows then in the place of now</source>
        <translation>muestra antes en lugar de ahora</translation>
    </message>
    <message>
        <source>now; press to see then in its place</source>
        <translation>ahora; toque para ver antes en su lugar</translation>
    </message>
</context>
<context>
    <name>PhotoTile</name>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>photo: %1</source>
        <translation>foto: %1</translation>
    </message>
    <message>
        <source>no photo</source>
        <translation>sin foto</translation>
    </message>
    <message>
        <source>%1; opens it</source>
        <comment>photo</comment>
        <translation>%1; la abre</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Rig</source>
        <comment>place: the drawing of the rig</comment>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Due</source>
        <comment>place: what is due when</comment>
        <translation>Plazos</translation>
    </message>
    <message>
        <source>Logbook</source>
        <comment>place: walks, trips, mends</comment>
        <translation>Bitácora</translation>
    </message>
    <message>
        <source>Bench</source>
        <comment>place: worked computations</comment>
        <translation>Banco</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>emergencia</translation>
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
        <translation>lado de la acera</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>lado de la calzada</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>frente</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>atrás</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>desde arriba</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>debajo</translation>
    </message>
    <message>
        <source>not told yet</source>
        <translation>sin decir todavía</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <comment>place on the rig</comment>
        <translation>Dónde: %1</translation>
    </message>
    <message>
        <source>touch the spot</source>
        <translation>toque el lugar</translation>
    </message>
    <message>
        <source>or at a named place</source>
        <translation>o en un lugar con nombre</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>desde el frente</translation>
    </message>
    <message>
        <source>from the centre line</source>
        <translation>desde la línea central</translation>
    </message>
    <message>
        <source>up from the ground</source>
        <translation>sobre el suelo</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>length, from where</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <comment>from where</comment>
        <translation>medido: %1</translation>
    </message>
</context>
<context>
    <name>PlaceHost</name>
    <message>
        <source>Opening the logbook …</source>
        <translation>Abriendo la bitácora …</translation>
    </message>
</context>
<context>
    <name>PlatePicture</name>
    <message>
        <source>picture of a placard: mass, axles, tires, pressure when cold</source>
        <translation>dibujo de una placa: masa, ejes, neumáticos, presión en frío</translation>
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
        <translation>Cada cuántos meses</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Cada cuánta distancia</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>por ejemplo 10 000 km o 6000 mi</translation>
    </message>
    <message>
        <source>set this</source>
        <translation>fijarlo</translation>
    </message>
    <message>
        <source>as the catalogue has it</source>
        <translation>como en el catálogo</translation>
    </message>
    <message>
        <source>show it again</source>
        <translation>mostrarlo de nuevo</translation>
    </message>
    <message>
        <source>hide it</source>
        <translation>ocultarlo</translation>
    </message>
</context>
<context>
    <name>PointWords</name>
    <message numerus="yes">
        <source>every %n month(s)</source>
        <comment>interval</comment>
        <translation>
            <numerusform>cada %n mes</numerusform>
            <numerusform>cada %n meses</numerusform>
        </translation>
    </message>
    <message>
        <source>before each move, or after what happens</source>
        <translation>antes de cada viaje, o tras lo que ocurra</translation>
    </message>
    <message>
        <source>every %1</source>
        <comment>distance</comment>
        <translation>cada %1</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>every so many months, distance</comment>
        <translation>%1 o %2</translation>
    </message>
    <message>
        <source>hidden by %1, %2</source>
        <comment>who, date</comment>
        <translation>oculto por %1, %2</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>propio</translation>
    </message>
    <message>
        <source>the catalogue has %1</source>
        <comment>interval</comment>
        <translation>el catálogo dice %1</translation>
    </message>
    <message>
        <source>it matters on the road</source>
        <translation>importa en la carretera</translation>
    </message>
    <message>
        <source>fire, gas or fumes</source>
        <translation>fuego, gas o humos</translation>
    </message>
    <message>
        <source>water gets in</source>
        <translation>entra agua</translation>
    </message>
    <message>
        <source>health</source>
        <translation>salud</translation>
    </message>
    <message>
        <source>someone can be hurt at camp</source>
        <translation>alguien puede lesionarse en el campamento</translation>
    </message>
    <message>
        <source>comfort</source>
        <translation>comodidad</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>solo el aspecto</translation>
    </message>
    <message>
        <source>every month</source>
        <comment>interval</comment>
        <translation>cada mes</translation>
    </message>
</context>
<context>
    <name>PointsPage</name>
    <message>
        <source>Points of this rig</source>
        <translation>Puntos de este vehículo</translation>
    </message>
    <message>
        <source>Find a point by a word</source>
        <translation>Buscar un punto por una palabra</translation>
    </message>
    <message>
        <source>add a point of your own</source>
        <translation>añadir un punto propio</translation>
    </message>
</context>
<context>
    <name>QrPicture</name>
    <message>
        <source>The code as a picture; the words below say the same</source>
        <translation>El código como imagen; las palabras de abajo dicen lo mismo</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>more figures, if known</source>
        <translation>más cifras, si se saben</translation>
    </message>
    <message>
        <source>a worked example</source>
        <translation>un ejemplo resuelto</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>takes away what was typed</comment>
        <translation>empezar de nuevo</translation>
    </message>
</context>
<context>
    <name>ReadCode</name>
    <message>
        <source>read the picture by camera</source>
        <translation>leer la imagen con la cámara</translation>
    </message>
    <message>
        <source>read it from a picture file</source>
        <translation>leerla de un archivo de imagen</translation>
    </message>
    <message>
        <source>This device has no camera that can be used. Type the words, or read a picture file.</source>
        <translation>Este dispositivo no tiene una cámara que se pueda usar. Escriba las palabras o lea un archivo de imagen.</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>lo que ve la cámara</translation>
    </message>
    <message>
        <source>Hold it straight on, so that the whole picture is seen.</source>
        <translation>Téngalo de frente, que se vea la imagen entera.</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>La cámara arranca …</translation>
    </message>
    <message>
        <source>leave the camera</source>
        <translation>dejar la cámara</translation>
    </message>
    <message>
        <source>Picture of the code</source>
        <translation>Imagen del código</translation>
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
        <translation>la última vez %1</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <comment>quantity, unit</comment>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>over all walks</source>
        <comment>readings</comment>
        <translation>en todas las rondas</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>%1 on %2</source>
        <comment>last reading, date</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>limits</comment>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>cifra del fabricante: sin escribir</translation>
    </message>
    <message>
        <source>Not understood. Write it for example as %1.</source>
        <translation>No se entendió. Escríbalo por ejemplo como %1.</translation>
    </message>
    <message>
        <source>%1 is outside the limit (%2, %3). Consider attention.</source>
        <translation>%1 está fuera del límite (%2, %3). Considere atención.</translation>
    </message>
</context>
<context>
    <name>Reason</name>
    <message>
        <source>Water gets in if it fails.</source>
        <translation>Entra agua si falla.</translation>
    </message>
    <message>
        <source>It matters on the road.</source>
        <translation>Importa en la ruta.</translation>
    </message>
    <message>
        <source>Fire, gas or fumes if it fails.</source>
        <translation>Fuego, gas o humos si falla.</translation>
    </message>
    <message>
        <source>It touches health.</source>
        <translation>Toca la salud.</translation>
    </message>
    <message>
        <source>Someone can be hurt at camp.</source>
        <translation>Alguien puede lastimarse en el campamento.</translation>
    </message>
    <message>
        <source>It is a matter of looks.</source>
        <translation>Es cuestión de aspecto.</translation>
    </message>
    <message>
        <source>It is a matter of comfort.</source>
        <translation>Es cuestión de comodidad.</translation>
    </message>
    <message>
        <source>You drive about %1 a year, by your own seasons.</source>
        <translation>Usted recorre cerca de %1 al año, según sus propias temporadas.</translation>
    </message>
    <message>
        <source>Your trips so far come to about %1 a year.</source>
        <translation>Sus viajes hasta ahora dan cerca de %1 al año.</translation>
    </message>
    <message>
        <source>You said about %1 a year.</source>
        <translation>Usted dijo cerca de %1 al año.</translation>
    </message>
    <message>
        <source>You said that it does not move.</source>
        <translation>Usted dijo que no se mueve.</translation>
    </message>
    <message>
        <source>Nothing is known of how much you drive: %1 a year is taken.</source>
        <translation>No se sabe cuánto recorre: se toman %1 al año.</translation>
    </message>
    <message>
        <source>Last looked at on %1.</source>
        <translation>Revisado por última vez el %1.</translation>
    </message>
    <message>
        <source>Could not be looked at on %1.</source>
        <translation>No se pudo revisar el %1.</translation>
    </message>
    <message>
        <source>Since then: %1.</source>
        <translation>Desde entonces: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Every %n months, counted from %1.</source>
        <translation>
            <numerusform>Cada mes, contado desde el %1.</numerusform>
            <numerusform>Cada %n meses, contados desde el %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 driven since.</source>
        <translation>%1 recorridos desde entonces.</translation>
    </message>
    <message>
        <source>A wheel was fitted on %1; look again from %2 on.</source>
        <translation>Se montó una rueda el %1; revisar de nuevo desde %2.</translation>
    </message>
    <message>
        <source>Because of: %1.</source>
        <translation>Por: %1.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Nadie lo revisó todavía.</translation>
    </message>
    <message>
        <source>A limit of zero was left out.</source>
        <translation>Se dejó fuera un límite de cero.</translation>
    </message>
    <message>
        <source>Grade %1 of 5.</source>
        <translation>Grado %1 de 5.</translation>
    </message>
    <message>
        <source>The next look is taken to be %1 months away.</source>
        <translation>Se toma la próxima revisión a %1 meses.</translation>
    </message>
    <message>
        <source>The chance that it fails before then is taken as %1.</source>
        <translation>La probabilidad de que falle antes se toma como %1.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>El peor grado en un punto de la lista de retención.</translation>
    </message>
    <message>
        <source>It was mended; a look has to confirm it.</source>
        <translation>Fue reparado; una revisión tiene que confirmarlo.</translation>
    </message>
</context>
<context>
    <name>ReasonChips</name>
    <message>
        <source>Could not look, because</source>
        <translation>No se pudo revisar, porque</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>no se pudo mirar: %1</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>otra razón</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>put the reasons away</comment>
        <translation>ahora no</translation>
    </message>
</context>
<context>
    <name>ReasonsPage</name>
    <message>
        <source>Could not look, because</source>
        <translation>No se pudo revisar, porque</translation>
    </message>
    <message>
        <source>Note, if it helps</source>
        <translation>Nota, si ayuda</translation>
    </message>
</context>
<context>
    <name>RecoverPage</name>
    <message>
        <source>Back by the words on paper</source>
        <translation>Volver con las palabras en papel</translation>
    </message>
    <message>
        <source>Add the store first that has the rig, on the page before this one.</source>
        <translation>Añada primero el almacén que tiene el vehículo, en la página anterior.</translation>
    </message>
    <message>
        <source>The store that has the rig</source>
        <translation>El almacén que tiene el vehículo</translation>
    </message>
    <message>
        <source>The 24 words</source>
        <translation>Las 24 palabras</translation>
    </message>
    <message>
        <source>The mark, seven words beside them; may stay empty</source>
        <translation>La marca, siete palabras al lado; puede quedar vacía</translation>
    </message>
    <message>
        <source>Own the rig again</source>
        <translation>Ser de nuevo propietario</translation>
    </message>
    <message>
        <source>Looking at the store …</source>
        <translation>Mirando el almacén …</translation>
    </message>
    <message>
        <source>This device owns the rig again.</source>
        <translation>Este dispositivo es de nuevo propietario del vehículo.</translation>
    </message>
    <message>
        <source>No mark was typed. Compare it with the paper before you trust what comes:</source>
        <translation>No se escribió ninguna marca. Compárela con el papel antes de fiarse de lo que llegue:</translation>
    </message>
    <message>
        <source>Mark of the rig</source>
        <translation>Marca del vehículo</translation>
    </message>
    <message>
        <source>Exchange with the store now: the rig comes from there. Then revoke the devices that were lost.</source>
        <translation>Intercambie ahora con el almacén: el vehículo llega de allí. Después revoque los dispositivos perdidos.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>A los almacenes</translation>
    </message>
</context>
<context>
    <name>ReportScope</name>
    <message>
        <source>The walk: %1</source>
        <translation>La ronda: %1</translation>
    </message>
    <message>
        <source>Against: %1</source>
        <comment>the earlier walk</comment>
        <translation>Frente a: %1</translation>
    </message>
    <message>
        <source>older ones</source>
        <comment>walks</comment>
        <translation>más antiguas</translation>
    </message>
    <message>
        <source>Findings: all that suit</source>
        <translation>Hallazgos: todos los que corresponden</translation>
    </message>
    <message numerus="yes">
        <source>Findings: %n chosen</source>
        <translation>
            <numerusform>Hallazgos: %n elegido</numerusform>
            <numerusform>Hallazgos: %n elegidos</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it stands, how to get there</source>
        <translation>Dónde está y cómo llegar</translation>
    </message>
    <message>
        <source>Power at the place</source>
        <translation>Corriente en el lugar</translation>
    </message>
    <message>
        <source>Key, and who has it</source>
        <translation>Llave, y quién la tiene</translation>
    </message>
</context>
<context>
    <name>ReportSigners</name>
    <message>
        <source>take the signature away: %1</source>
        <comment>who signed</comment>
        <translation>quitar la firma: %1</translation>
    </message>
    <message>
        <source>sign on the screen: %1</source>
        <comment>who signs</comment>
        <translation>firmar en la pantalla: %1</translation>
    </message>
    <message>
        <source>What was signed stays as it stood. Choosing anything else here takes the signatures away.</source>
        <translation>Lo firmado queda como estaba. Elegir otra cosa aquí quita las firmas.</translation>
    </message>
</context>
<context>
    <name>ReportsPage</name>
    <message>
        <source>Reports</source>
        <translation>Informes</translation>
    </message>
    <message>
        <source>What should it tell?</source>
        <translation>¿Qué debe contar?</translation>
    </message>
    <message>
        <source>another report</source>
        <translation>otro informe</translation>
    </message>
    <message>
        <source>Drawing the pages …</source>
        <translation>Dibujando las páginas …</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <comment>title of a report</comment>
        <translation>%1, página %2 de %3</translation>
    </message>
    <message>
        <source>page before</source>
        <translation>página anterior</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>página siguiente</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Guardar: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Sheets of paper</source>
        <translation>Hojas de papel</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper size</comment>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation>Dónde fue</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>of a report</comment>
        <translation>se omite</translation>
    </message>
    <message>
        <source>to about 5 km</source>
        <comment>how exact a place is told</comment>
        <translation>a unos 5 km</translation>
    </message>
    <message>
        <source>exact</source>
        <comment>how exact a place is told</comment>
        <translation>exacto</translation>
    </message>
    <message>
        <source>What the camera wrote into photos: place, time, its number</source>
        <translation>Lo que la cámara escribió en las fotos: lugar, hora, su número</translation>
    </message>
    <message>
        <source>kept, in the web page</source>
        <comment>data in photos</comment>
        <translation>se conserva, en la página web</translation>
    </message>
    <message>
        <source>The file lies where you put it; nothing is sent anywhere.</source>
        <translation>El archivo queda donde usted lo pone; nada se envía a ninguna parte.</translation>
    </message>
</context>
<context>
    <name>RigBoard</name>
    <message>
        <source>kerb side</source>
        <comment>face of the rig</comment>
        <translation>lado de la acera</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>lado de la calzada</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>frente</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>atrás</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>debajo</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>face of the rig, how many findings</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>párese aquí</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>desde arriba</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>desde la escalera, o cámara en pértiga</translation>
    </message>
</context>
<context>
    <name>RigFoot</name>
    <message>
        <source>fresh water</source>
        <translation>agua limpia</translation>
    </message>
    <message>
        <source>grey water</source>
        <translation>aguas grises</translation>
    </message>
    <message>
        <source>black water</source>
        <translation>aguas negras</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>botella de gas</translation>
    </message>
    <message>
        <source>house battery</source>
        <translation>batería de servicio</translation>
    </message>
    <message>
        <source>Dashed: where such rigs usually have them, common practice, not measured: %1.</source>
        <translation>A trazos: donde suelen llevarlos, práctica común, no medido: %1.</translation>
    </message>
</context>
<context>
    <name>RigForm</name>
    <message>
        <source>Not understood: %1</source>
        <translation>No se entendió: %1</translation>
    </message>
    <message>
        <source>Write it for example as 6.4 m or 21 ft.</source>
        <translation>Escríbalo por ejemplo como 6.4 m o 21 ft.</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Elija uno de la lista.</translation>
    </message>
    <message>
        <source>It has no name, or a very long one.</source>
        <translation>No tiene nombre, o uno muy largo.</translation>
    </message>
    <message>
        <source>Give the rig a short name.</source>
        <translation>Dé al vehículo un nombre corto.</translation>
    </message>
    <message>
        <source>The axles cannot be like that.</source>
        <translation>Los ejes no pueden estar así.</translation>
    </message>
    <message>
        <source>Give each axle&apos;s distance from the front face, foremost first, for example 3.3 m.</source>
        <translation>Dé la distancia de cada eje al frente, el delantero primero, por ejemplo 3.3 m.</translation>
    </message>
    <message>
        <source>This cannot be right.</source>
        <translation>Esto no puede ser.</translation>
    </message>
    <message>
        <source>Check the number and its unit, for example 6.4 m or 21 ft.</source>
        <translation>Revise el número y su unidad, por ejemplo 6.4 m o 21 ft.</translation>
    </message>
    <message>
        <source>Write it for example as 4.5 bar or 65 psi.</source>
        <translation>Escríbalo por ejemplo como 4,5 bar o 65 psi.</translation>
    </message>
    <message>
        <source>Write the number with its unit.</source>
        <translation>Escriba el número con su unidad.</translation>
    </message>
    <message>
        <source>Nothing is chosen.</source>
        <translation>No se eligió nada.</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Elija lo que más se acerque.</translation>
    </message>
    <message>
        <source>Choose where the rig is at home.</source>
        <translation>Elija de dónde es el vehículo.</translation>
    </message>
    <message>
        <source>A door, window or vent would lie outside the rig.</source>
        <translation>Una puerta, ventana o respiradero quedaría fuera del vehículo.</translation>
    </message>
    <message>
        <source>Check the length, or move it on the command line with rig set.</source>
        <translation>Compruebe el largo, o muévalo en la línea de órdenes con rig set.</translation>
    </message>
    <message>
        <source>The placard asks for more than the sidewall allows.</source>
        <translation>La placa pide más de lo que permite el flanco.</translation>
    </message>
    <message>
        <source>Read both again; a tire shop decides which tire is wrong.</source>
        <translation>Lea ambos otra vez; un taller de neumáticos decide cuál neumático no corresponde.</translation>
    </message>
    <message>
        <source>Check it, for example 4.5 bar or 65 psi.</source>
        <translation>Compruébelo, por ejemplo 4,5 bar o 65 psi.</translation>
    </message>
</context>
<context>
    <name>RigHead</name>
    <message>
        <source>settings</source>
        <comment>page</comment>
        <translation>ajustes</translation>
    </message>
</context>
<context>
    <name>RigView</name>
    <message>
        <source>drawing of the rig</source>
        <translation>dibujo del vehículo</translation>
    </message>
    <message>
        <source>drawing of the rig, %1</source>
        <comment>which face</comment>
        <translation>dibujo del vehículo, %1</translation>
    </message>
    <message>
        <source>finding %1: %2, %3</source>
        <comment>number, what, call</comment>
        <translation>hallazgo %1: %2, %3</translation>
    </message>
    <message>
        <source>place %1: %2, %3</source>
        <comment>number, where, how often and when</comment>
        <translation>lugar %1: %2, %3</translation>
    </message>
</context>
<context>
    <name>RigWords</name>
    <message>
        <source>twin-axle</source>
        <translation>de dos ejes</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>axles, kind of rig</comment>
        <translation>%2 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n-axle</source>
        <translation>
            <numerusform>de %n eje</numerusform>
            <numerusform>de %n ejes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 today</source>
        <comment>time</comment>
        <translation>hoy %1</translation>
    </message>
    <message numerus="yes">
        <source>%n on hold: %1.</source>
        <translation>
            <numerusform>%n con retención: %1.</numerusform>
            <numerusform>%n con retención: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1.</source>
        <translation>
            <numerusform>Ninguna retención en el %n punto revisado desde %1.</numerusform>
            <numerusform>Ninguna retención entre los %n puntos revisados desde %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1 by %2.</source>
        <translation>
            <numerusform>Ninguna retención en el %n punto revisado desde %1 por %2.</numerusform>
            <numerusform>Ninguna retención entre los %n puntos revisados desde %1 por %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be looked at: %1.</source>
        <translation>
            <numerusform>%n no se pudo revisar: %1.</numerusform>
            <numerusform>%n no se pudieron revisar: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2 logged</source>
        <translation>%1; %2 anotados</translation>
    </message>
    <message>
        <source>Nothing was looked at yet.</source>
        <translation>Todavía no se revisó nada.</translation>
    </message>
    <message numerus="yes">
        <source>%n to mend soon.</source>
        <translation>
            <numerusform>%n por reparar pronto.</numerusform>
            <numerusform>%n por reparar pronto.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n está vencido.</numerusform>
            <numerusform>%n están vencidos.</numerusform>
        </translation>
    </message>
    <message>
        <source>This says what was looked at, not that nothing will fail.</source>
        <translation>Esto dice qué se revisó, no que nada vaya a fallar.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>El peor grado en un punto de la lista de retención.</translation>
    </message>
    <message>
        <source>It is on the hold list and could not be looked at.</source>
        <translation>Está en la lista de retención y no se pudo revisar.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n línea</numerusform>
            <numerusform>%n líneas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n minutes</source>
        <translation>
            <numerusform>cerca de %n minuto</numerusform>
            <numerusform>cerca de %n minutos</numerusform>
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
        <translation>%1, oculto por %2, %3</translation>
    </message>
    <message>
        <source>accepted by %1 on %2: %3</source>
        <comment>who, when, because</comment>
        <translation>aceptado por %1 el %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Hidden: %1</source>
        <comment>points</comment>
        <translation>Oculto: %1</translation>
    </message>
    <message>
        <source>why</source>
        <comment>opens the grounds of the figures</comment>
        <translation>por qué</translation>
    </message>
    <message>
        <source>its measures and plates</source>
        <translation>sus medidas y placas</translation>
    </message>
    <message numerus="yes">
        <source>%n of them are jobs of a quarter of an hour and more; their time is not counted. Pass over what is not for today.</source>
        <translation>
            <numerusform>%n de ellos es un trabajo de un cuarto de hora o más; su tiempo no se cuenta. Pase por alto lo que no sea para hoy.</numerusform>
            <numerusform>%n de ellos son trabajos de un cuarto de hora o más; su tiempo no se cuenta. Pase por alto lo que no sea para hoy.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n hours</source>
        <translation>
            <numerusform>aproximadamente %n hora</numerusform>
            <numerusform>aproximadamente %n horas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RigsBlock</name>
    <message>
        <source>Rig under care</source>
        <translation>Vehículo a cargo</translation>
    </message>
    <message>
        <source>put %1 away: not offered on this device, its logbook stays</source>
        <comment>rig</comment>
        <translation>guardar %1: no se ofrece en este dispositivo, su bitácora queda</translation>
    </message>
    <message>
        <source>bring back %1</source>
        <comment>rig that was put away</comment>
        <translation>volver a sacar %1</translation>
    </message>
    <message>
        <source>set up another rig</source>
        <translation>agregar otro vehículo</translation>
    </message>
</context>
<context>
    <name>RoadLine</name>
    <message>
        <source>Roughness along the way: %1 to %2 m/km, the roughest %3 from where the log began.</source>
        <translation>Aspereza a lo largo del camino: de %1 a %2 m/km, lo más áspero a %3 de donde empezó el registro.</translation>
    </message>
</context>
<context>
    <name>SearchModel</name>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>hallazgo</translation>
    </message>
    <message>
        <source>note on a walk</source>
        <translation>nota de una ronda</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>reparación</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>ronda</translation>
    </message>
    <message>
        <source>trip</source>
        <translation>viaje</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>estancia</translation>
    </message>
    <message>
        <source>event</source>
        <translation>suceso</translation>
    </message>
</context>
<context>
    <name>SearchPage</name>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Words, or how they begin</source>
        <translation>Palabras, o cómo empiezan</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Buscando …</translation>
    </message>
    <message>
        <source>Findings, notes, mends, trips and points of this rig. Accents do not matter.</source>
        <translation>Hallazgos, notas, reparaciones, viajes y puntos de este vehículo. Los acentos no importan.</translation>
    </message>
    <message>
        <source>Nothing of this rig has these words.</source>
        <translation>Nada de este vehículo tiene esas palabras.</translation>
    </message>
</context>
<context>
    <name>SeasonRuler</name>
    <message>
        <source>the year, and where the rig will be: %1</source>
        <translation>el año, y dónde estará el vehículo: %1</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Who looks</source>
        <comment>name written with each mark</comment>
        <translation>Quién revisa</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>day</source>
        <comment>theme</comment>
        <translation>día</translation>
    </message>
    <message>
        <source>night</source>
        <comment>theme</comment>
        <translation>noche</translation>
    </message>
    <message>
        <source>sun, black on white</source>
        <comment>theme</comment>
        <translation>sol, negro sobre blanco</translation>
    </message>
    <message>
        <source>Hands; gloves get larger places to press</source>
        <translation>Manos; con guantes, zonas más grandes</translation>
    </message>
    <message>
        <source>bare hands</source>
        <translation>sin guantes</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>guantes</translation>
    </message>
    <message>
        <source>Size of words</source>
        <translation>Tamaño de letra</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>size of words</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Units shown; typing takes either</source>
        <translation>Unidades que se muestran; se escribe en cualquiera</translation>
    </message>
    <message>
        <source>metres, kilometres, kPa, °C</source>
        <translation>metros, kilómetros, kPa, °C</translation>
    </message>
    <message>
        <source>feet, miles, psi, °F</source>
        <translation>pies, millas, psi, °F</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>points of this rig: add, hide, how often</source>
        <translation>puntos de este vehículo: añadir, ocultar, cada cuánto</translation>
    </message>
    <message>
        <source>exchange with other devices</source>
        <translation>intercambiar con otros dispositivos</translation>
    </message>
    <message>
        <source>about: version, data, licences</source>
        <translation>acerca de: versión, datos, licencias</translation>
    </message>
    <message>
        <source>A buzz in the hand when a mark is written</source>
        <translation>Una vibración en la mano al escribir una marca</translation>
    </message>
    <message>
        <source>on</source>
        <comment>setting</comment>
        <translation>sí</translation>
    </message>
    <message>
        <source>off</source>
        <comment>setting</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>A soft tick when a mark is written</source>
        <translation>Un tic suave al escribir una marca</translation>
    </message>
</context>
<context>
    <name>SetupFitted</name>
    <message>
        <source>What is usual is chosen already. It decides what the walks ask about.</source>
        <translation>Lo habitual ya está elegido. Decide sobre qué preguntan las rondas.</translation>
    </message>
    <message>
        <source>Fitted to it</source>
        <translation>Lo que lleva</translation>
    </message>
    <message>
        <source>more that may be fitted</source>
        <translation>más que puede llevar</translation>
    </message>
    <message>
        <source>What the roof is made of</source>
        <translation>De qué es el techo</translation>
    </message>
    <message>
        <source>May the roof carry a person?</source>
        <translation>¿El techo soporta a una persona?</translation>
    </message>
</context>
<context>
    <name>SetupForm</name>
    <message>
        <source>Your rig</source>
        <translation>Su vehículo</translation>
    </message>
    <message>
        <source>Another rig</source>
        <translation>Otro vehículo</translation>
    </message>
    <message numerus="yes">
        <source>%n answer(s) to put right, told above</source>
        <translation>
            <numerusform>%n respuesta por corregir, indicada arriba</numerusform>
            <numerusform>%n respuestas por corregir, indicadas arriba</numerusform>
        </translation>
    </message>
    <message>
        <source>Draw it</source>
        <translation>Dibujarlo</translation>
    </message>
    <message>
        <source>or take part in a rig of another device</source>
        <translation>o participar en un vehículo de otro dispositivo</translation>
    </message>
    <message>
        <source>kind</source>
        <comment>step of a form</comment>
        <translation>tipo</translation>
    </message>
    <message>
        <source>measures</source>
        <comment>step of a form</comment>
        <translation>medidas</translation>
    </message>
    <message>
        <source>fitted</source>
        <comment>step of a form</comment>
        <translation>equipo</translation>
    </message>
    <message>
        <source>plates</source>
        <comment>step of a form</comment>
        <translation>placas</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Elija lo que más se acerque.</translation>
    </message>
    <message>
        <source>Its sheet</source>
        <comment>of the rig</comment>
        <translation>Su ficha</translation>
    </message>
    <message>
        <source>The drawing and the points to look at are made from this: four short steps, of which two are enough to begin.</source>
        <translation>De esto se hacen el dibujo y los puntos que mirar: cuatro pasos cortos, de los que bastan dos para empezar.</translation>
    </message>
    <message>
        <source>Look round an invented rig first</source>
        <translation>Mirar primero un vehículo inventado</translation>
    </message>
    <message>
        <source>two years of walks, trips and findings, all made up</source>
        <translation>dos años de rondas, viajes y hallazgos, todo inventado</translation>
    </message>
    <message>
        <source>or bring a logbook back from a backup</source>
        <translation>o recuperar una bitácora de una copia</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>the rest can wait</source>
        <translation>lo demás puede esperar</translation>
    </message>
    <message>
        <source>Next: how big</source>
        <translation>Siguiente: qué tamaño</translation>
    </message>
    <message>
        <source>Next: what is fitted</source>
        <translation>Siguiente: qué lleva</translation>
    </message>
    <message>
        <source>Next: its plates</source>
        <translation>Siguiente: sus placas</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>Una copia de una bitácora</translation>
    </message>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Bitácoras (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>SetupKind</name>
    <message>
        <source>Where is it at home? Lamps, plugs and gas follow that.</source>
        <translation>¿De dónde es? De eso dependen luces, enchufes y gas.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <comment>kind of rig</comment>
        <translation>¿Qué es?</translation>
    </message>
    <message>
        <source>Measures in; typing takes either</source>
        <translation>Medidas en; se puede escribir en ambas</translation>
    </message>
    <message>
        <source>metres, kPa, °C</source>
        <translation>metros, kPa, °C</translation>
    </message>
    <message>
        <source>feet, psi, °F</source>
        <translation>pies, psi, °F</translation>
    </message>
    <message>
        <source>Your name, written beside each mark; may stay empty</source>
        <translation>Su nombre, escrito junto a cada marca; puede quedar vacío</translation>
    </message>
</context>
<context>
    <name>SetupLists</name>
    <message>
        <source>travel trailer</source>
        <comment>kind of rig</comment>
        <translation>casa rodante</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <comment>kind of rig</comment>
        <translation>quinta rueda</translation>
    </message>
    <message>
        <source>folding or pop-up trailer</source>
        <comment>kind of rig</comment>
        <translation>remolque plegable</translation>
    </message>
    <message>
        <source>teardrop</source>
        <comment>kind of rig</comment>
        <translation>lágrima</translation>
    </message>
    <message>
        <source>truck camper</source>
        <comment>kind of rig</comment>
        <translation>módulo sobre camioneta</translation>
    </message>
    <message>
        <source>motorhome</source>
        <comment>kind of rig</comment>
        <translation>autocaravana</translation>
    </message>
    <message>
        <source>camper van</source>
        <comment>kind of rig</comment>
        <translation>furgón camper</translation>
    </message>
    <message>
        <source>North America</source>
        <comment>practice</comment>
        <translation>América del Norte</translation>
    </message>
    <message>
        <source>Europe</source>
        <comment>practice</comment>
        <translation>Europa</translation>
    </message>
    <message>
        <source>Australia and New Zealand</source>
        <comment>practice</comment>
        <translation>Australia y Nueva Zelanda</translation>
    </message>
    <message>
        <source>other</source>
        <comment>practice</comment>
        <translation>otra</translation>
    </message>
    <message>
        <source>no</source>
        <comment>answer</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>yes, by its maker&apos;s rating</source>
        <comment>answer</comment>
        <translation>sí, según su fabricante</translation>
    </message>
    <message>
        <source>not known, counts as no</source>
        <comment>answer</comment>
        <translation>no se sabe, cuenta como no</translation>
    </message>
    <message>
        <source>rubber or plastic membrane</source>
        <comment>roof</comment>
        <translation>membrana de goma o plástico</translation>
    </message>
    <message>
        <source>moulded in one piece</source>
        <comment>roof</comment>
        <translation>moldeado de una pieza</translation>
    </message>
    <message>
        <source>metal sheet</source>
        <comment>roof</comment>
        <translation>chapa de metal</translation>
    </message>
    <message>
        <source>canvas</source>
        <comment>roof</comment>
        <translation>lona</translation>
    </message>
</context>
<context>
    <name>SetupMeasures</name>
    <message>
        <source>Width of the body</source>
        <translation>Ancho de la carrocería</translation>
    </message>
    <message>
        <source>Height of the body, floor to roof</source>
        <translation>Alto de la carrocería, del piso al techo</translation>
    </message>
    <message>
        <source>Floor above the ground</source>
        <translation>Altura del piso sobre el suelo</translation>
    </message>
    <message>
        <source>Coupling to the front of the body</source>
        <translation>Del enganche al frente de la carrocería</translation>
    </message>
    <message>
        <source>left empty: %1, as is usual</source>
        <comment>a measure</comment>
        <translation>vacío: %1, lo habitual</translation>
    </message>
    <message>
        <source>What is left empty is drawn as such rigs usually are. Measure when there is time: all of it can be put right later.</source>
        <translation>Lo que queda vacío se dibuja como suelen ser estos vehículos. Mida cuando haya tiempo: todo se puede corregir después.</translation>
    </message>
    <message>
        <source>Name</source>
        <comment>of the rig</comment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Length of the body, without the drawbar</source>
        <translation>Largo de la carrocería, sin la lanza</translation>
    </message>
    <message>
        <source>such as 21 ft 6 in or 6.55 m</source>
        <translation>por ejemplo 21 ft 6 in o 6.55 m</translation>
    </message>
    <message>
        <source>such as 6.4 m or 21 ft</source>
        <translation>por ejemplo 6.4 m o 21 ft</translation>
    </message>
    <message>
        <source>Axles</source>
        <translation>Ejes</translation>
    </message>
    <message>
        <source>more measures: width, height, floor, axles</source>
        <translation>más medidas: ancho, alto, piso, ejes</translation>
    </message>
    <message>
        <source>Axles, each aft of the front of the body</source>
        <translation>Ejes, cada uno desde el frente de la carrocería</translation>
    </message>
</context>
<context>
    <name>SetupPlates</name>
    <message>
        <source>such as 65 psi or 4.5 bar</source>
        <translation>por ejemplo 65 psi o 4,5 bar</translation>
    </message>
    <message>
        <source>such as 450 kPa, 4.5 bar or 65 psi</source>
        <translation>por ejemplo 450 kPa, 4,5 bar o 65 psi</translation>
    </message>
    <message>
        <source>such as 7,500 lb or 3400 kg</source>
        <translation>por ejemplo 7500 lb o 3400 kg</translation>
    </message>
    <message>
        <source>such as 2500 kg or 5,500 lb</source>
        <translation>por ejemplo 2500 kg o 5500 lb</translation>
    </message>
    <message>
        <source>1: pressure, cold, by the placard</source>
        <translation>1: presión, en frío, según la placa</translation>
    </message>
    <message>
        <source>2: largest mass of the loaded rig</source>
        <translation>2: masa máxima del vehículo cargado</translation>
    </message>
    <message>
        <source>1: size, as it stands</source>
        <translation>1: medida, tal como está escrita</translation>
    </message>
    <message>
        <source>such as 205/75 R14 105</source>
        <translation>por ejemplo 205/75 R14 105</translation>
    </message>
    <message>
        <source>1: load range, a letter</source>
        <translation>1: rango de carga, una letra</translation>
    </message>
    <message>
        <source>such as D; many tires have none</source>
        <translation>por ejemplo D; muchos neumáticos no la tienen</translation>
    </message>
    <message>
        <source>2: largest load, single</source>
        <translation>2: carga máxima, rueda simple</translation>
    </message>
    <message>
        <source>such as 2,040 lb</source>
        <translation>por ejemplo 2040 lb</translation>
    </message>
    <message>
        <source>such as 925 kg</source>
        <translation>por ejemplo 925 kg</translation>
    </message>
    <message>
        <source>2: at this pressure, cold</source>
        <translation>2: a esta presión, en frío</translation>
    </message>
    <message>
        <source>The placard</source>
        <translation>La placa</translation>
    </message>
    <message>
        <source>A plate or a sticker on the body: often near the front of the road side, in a door frame or a locker.</source>
        <translation>Una placa o un adhesivo en la carrocería: a menudo cerca del frente del lado de la calzada, en el marco de una puerta o en un cofre.</translation>
    </message>
    <message>
        <source>The tire&apos;s sidewall</source>
        <translation>El flanco del neumático</translation>
    </message>
    <message>
        <source>3: the date code: the last four figures, week and year. 2326 is week 23 of 2026. The walk asks for it on each wheel.</source>
        <translation>3: el código de fecha: las últimas cuatro cifras, semana y año. 2326 es la semana 23 de 2026. La ronda lo pide en cada rueda.</translation>
    </message>
    <message>
        <source>The wheel</source>
        <translation>La rueda</translation>
    </message>
    <message>
        <source>Torque of the wheel nuts, by the maker</source>
        <translation>Par de las tuercas de rueda, según el fabricante</translation>
    </message>
    <message>
        <source>such as 100 lb·ft</source>
        <translation>por ejemplo 100 lb·ft</translation>
    </message>
    <message>
        <source>such as 120 N·m</source>
        <translation>por ejemplo 120 N·m</translation>
    </message>
    <message>
        <source>Only what stands on the rig counts as its maker&apos;s figure. Leave empty what you have not read; it can be added later.</source>
        <translation>Solo lo que está escrito en el vehículo cuenta como dato del fabricante. Deje vacío lo que no haya leído; se puede añadir después.</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>Share %1</source>
        <comment>rig</comment>
        <translation>Compartir %1</translation>
    </message>
    <message>
        <source>From then on what is written about this rig goes to every store you exchange with: signed by the device, and sealed so that only enrolled devices read it.</source>
        <translation>Desde entonces lo que se anota de este vehículo va a cada almacén con el que intercambie: firmado por el dispositivo y sellado para que solo lo lean dispositivos inscritos.</translation>
    </message>
    <message>
        <source>What the other device may do</source>
        <translation>Qué puede hacer el otro dispositivo</translation>
    </message>
    <message>
        <source>Until, a date such as 2027-03-31; may stay empty</source>
        <translation>Hasta, una fecha como 2027-03-31; puede quedar vacío</translation>
    </message>
    <message>
        <source>A hint to that device only. What ends its access is revoking it.</source>
        <translation>Solo un aviso para ese dispositivo. Lo que termina su acceso es revocarlo.</translation>
    </message>
    <message>
        <source>Show the code</source>
        <translation>Mostrar el código</translation>
    </message>
    <message>
        <source>Stands until %1.</source>
        <comment>time</comment>
        <translation>Vale hasta las %1.</translation>
    </message>
    <message>
        <source>Take the answer</source>
        <translation>Tomar la respuesta</translation>
    </message>
    <message>
        <source>Other digits there: somebody stands between. Then enroll nobody, and start again.</source>
        <translation>Si allí hay otras cifras, alguien está en medio. Entonces no inscriba a nadie y empiece de nuevo.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Dispositivo</translation>
    </message>
    <message>
        <source>Asks to be</source>
        <translation>Pide ser</translation>
    </message>
    <message>
        <source>Will be</source>
        <translation>Será</translation>
    </message>
    <message>
        <source>The same digits: enroll it</source>
        <translation>Las mismas cifras: inscribirlo</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2.</source>
        <comment>device, role</comment>
        <translation>%1 está inscrito como %2.</translation>
    </message>
    <message>
        <source>Exchange with a store now. The other device then finds the rig at the same store.</source>
        <translation>Intercambie ahora con un almacén. El otro dispositivo encuentra después el vehículo en el mismo almacén.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>A los almacenes</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>empezar de nuevo</translation>
    </message>
    <message>
        <source>Show it to nobody but the person who gets it. On the other device: exchange, take part in a rig. There, read the picture by camera, or type or paste the words.</source>
        <translation>No lo muestre más que a la persona que lo recibe. En el otro dispositivo: intercambiar, participar en un vehículo. Allí, lea la imagen con la cámara, o escriba o pegue las palabras.</translation>
    </message>
    <message>
        <source>What the other device shows now, as words</source>
        <translation>Lo que muestra ahora el otro dispositivo, en palabras</translation>
    </message>
</context>
<context>
    <name>Shift</name>
    <message>
        <source>%1 months</source>
        <comment>with one decimal</comment>
        <translation>%1 meses</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <comment>months</comment>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>%1 later</source>
        <comment>months</comment>
        <translation>%1 después</translation>
    </message>
    <message>
        <source>shaking on the road</source>
        <translation>sacudidas del camino</translation>
    </message>
    <message>
        <source>how far you drive</source>
        <translation>cuánto se rueda</translation>
    </message>
    <message>
        <source>earlier looks and mends</source>
        <translation>miradas y arreglos de antes</translation>
    </message>
    <message>
        <source>a limit that nothing may lengthen</source>
        <translation>un límite que nada puede alargar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, causes</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>The %n day(s) since %1 aged it like %2.</source>
        <translation>
            <numerusform>El %n día desde %1 lo envejeció como %2.</numerusform>
            <numerusform>Los %n días desde %1 lo envejecieron como %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SignPad</name>
    <message>
        <source>sign here: %1</source>
        <comment>who signs</comment>
        <translation>firmar aquí: %1</translation>
    </message>
    <message>
        <source>Signed</source>
        <comment>end of signing</comment>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>begin again</source>
        <comment>signing</comment>
        <translation>empezar de nuevo</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>signing</comment>
        <translation>ahora no</translation>
    </message>
</context>
<context>
    <name>SixDigits</name>
    <message>
        <source>Six digits, on both devices</source>
        <translation>Seis cifras, en ambos dispositivos</translation>
    </message>
    <message>
        <source>Six digits: %1</source>
        <comment>code of a meeting</comment>
        <translation>Seis cifras: %1</translation>
    </message>
</context>
<context>
    <name>StandDrawing</name>
    <message>
        <source>stand inside, here</source>
        <translation>párese adentro, aquí</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>desde la escalera, o cámara en pértiga</translation>
    </message>
    <message>
        <source>look from the edges</source>
        <translation>mire desde los bordes</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>párese aquí</translation>
    </message>
</context>
<context>
    <name>StarPicture</name>
    <message>
        <source>All rounds are through.</source>
        <translation>Todas las vueltas están hechas.</translation>
    </message>
    <message>
        <source>Last round, wheel on the ground: to the maker&apos;s figure</source>
        <translation>Última vuelta, rueda en el suelo: a la cifra del fabricante</translation>
    </message>
    <message>
        <source>Second round, wheel on the ground: to about two thirds</source>
        <translation>Segunda vuelta, rueda en el suelo: a dos tercios, más o menos</translation>
    </message>
    <message>
        <source>First round, wheel off the ground: to about a third of the maker&apos;s figure</source>
        <translation>Primera vuelta, rueda en el aire: a un tercio, más o menos, de la cifra del fabricante</translation>
    </message>
    <message>
        <source>nut %1, %2 of %3</source>
        <comment>which nut, how many</comment>
        <translation>tuerca %1, %2 de %3</translation>
    </message>
    <message>
        <source>%1; press for the next</source>
        <comment>nut 4, 2 of 6</comment>
        <translation>%1; pulse para la siguiente</translation>
    </message>
    <message>
        <source>done</source>
        <comment>all nuts of a wheel</comment>
        <translation>hecho</translation>
    </message>
    <message>
        <source>Filled: the next nut. Heavy line: to the one after. Double ring: through in this round. Numbered clockwise from the top.</source>
        <translation>Llena: la tuerca siguiente. Línea gruesa: hacia la que sigue. Anillo doble: hecha en esta vuelta. Numeradas desde arriba, en el sentido del reloj.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <comment>with the first nut</comment>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>Tightened: the next</source>
        <comment>a nut</comment>
        <translation>Apretada: la siguiente</translation>
    </message>
    <message>
        <source>one nut back</source>
        <translation>una tuerca atrás</translation>
    </message>
</context>
<context>
    <name>StartSheet</name>
    <message>
        <source>Start a walk</source>
        <translation>Empezar una ronda</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>kind of walk, what it is for</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>most likely the one for today</source>
        <translation>la más probable para hoy</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n línea</numerusform>
            <numerusform>%n líneas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n minute(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, cerca de %n minuto</numerusform>
            <numerusform>, cerca de %n minutos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n hour(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, cerca de %n hora</numerusform>
            <numerusform>, cerca de %n horas</numerusform>
        </translation>
    </message>
    <message>
        <source>all of it</source>
        <comment>time for a walk</comment>
        <translation>todo</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <comment>time for a walk</comment>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>Time there is</source>
        <translation>Tiempo que hay</translation>
    </message>
</context>
<context>
    <name>StateFigures</name>
    <message>
        <source>under %1 %</source>
        <comment>chance</comment>
        <translation>menos de %1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>chance or share</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Nothing was found there at the last look.</source>
        <translation>En la última revisión no se encontró nada ahí.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Nadie lo revisó todavía.</translation>
    </message>
    <message>
        <source>The chance of a defect at the next look is taken as %1, between %2 and %3.</source>
        <translation>La probabilidad de un defecto en la próxima revisión se toma como %1, entre %2 y %3.</translation>
    </message>
    <message>
        <source>The scale: 50 is a chance of 1 in 100 of the worst kind of harm before the next look; 25 more is ten times as much.</source>
        <translation>La escala: 50 es una probabilidad de 1 entre 100 del peor daño antes de la próxima revisión; 25 más es diez veces tanto.</translation>
    </message>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <comment>point, concern</comment>
        <translation>%1: %2, entre %3 y %4</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more may be as bad</source>
        <translation>
            <numerusform>%1; %n más puede estar igual de mal</numerusform>
            <numerusform>%1; %n más pueden estar igual de mal</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tied with %2 more</source>
        <comment>concern, number</comment>
        <translation>%1, empatado con %2 más</translation>
    </message>
    <message>
        <source>Worst item, concern 0 to 100</source>
        <translation>Lo peor, preocupación de 0 a 100</translation>
    </message>
    <message>
        <source>%1, between %2 and %3</source>
        <comment>chance</comment>
        <translation>%1, entre %2 y %3</translation>
    </message>
    <message>
        <source>Chance that one serious item fails before its next look</source>
        <translation>Probabilidad de que falle algo grave antes de su próxima revisión</translation>
    </message>
    <message numerus="yes">
        <source>Of %n item(s) on which life, limb or the rig hangs.</source>
        <translation>
            <numerusform>De %n punto del que depende la vida, la integridad o el vehículo.</numerusform>
            <numerusform>De %n puntos de los que depende la vida, la integridad o el vehículo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each counts with its own chance, as if none knew of another; this is the chance that at least one of them fails.</source>
        <translation>Cada uno cuenta con su propia probabilidad, como si no supieran unos de otros; esta es la de que falle al menos uno.</translation>
    </message>
    <message>
        <source>What nobody has looked at counts with the chance of a rig about which nothing is known.</source>
        <translation>Lo que nadie ha revisado cuenta con la probabilidad de un vehículo del que no se sabe nada.</translation>
    </message>
    <message>
        <source>Looked at, by weight</source>
        <translation>Revisado, por peso</translation>
    </message>
    <message>
        <source>%1 of what weighs</source>
        <comment>share</comment>
        <translation>%1 de lo que pesa</translation>
    </message>
    <message>
        <source>A point weighs what hangs on it times how likely it would be at fault if nobody ever looked.</source>
        <translation>Un punto pesa lo que depende de él por la probabilidad de que esté mal si nadie mirara nunca.</translation>
    </message>
    <message>
        <source>A look counts until the point is due again.</source>
        <translation>Una revisión cuenta hasta que el punto vuelve a vencer.</translation>
    </message>
    <message>
        <source>over %1 %</source>
        <comment>chance</comment>
        <translation>más de %1 %</translation>
    </message>
</context>
<context>
    <name>StatePage</name>
    <message>
        <source>How it stands, and why</source>
        <translation>Cómo está, y por qué</translation>
    </message>
    <message>
        <source>Hidden, though the road or fire hangs on it</source>
        <translation>Oculto, aunque de ello depende la carretera o el fuego</translation>
    </message>
</context>
<context>
    <name>StoreForm</name>
    <message>
        <source>Its folder</source>
        <translation>Su carpeta</translation>
    </message>
    <message>
        <source>The file, with its folder</source>
        <translation>El archivo, con su carpeta</translation>
    </message>
    <message>
        <source>Address, https://…</source>
        <translation>Dirección, https://…</translation>
    </message>
    <message>
        <source>What devices meet at</source>
        <translation>Dónde se encuentran los dispositivos</translation>
    </message>
    <message>
        <source>a folder, stick or drive</source>
        <translation>una carpeta, memoria o unidad</translation>
    </message>
    <message>
        <source>a file to hand over</source>
        <translation>un archivo para entregar</translation>
    </message>
    <message>
        <source>a WebDAV address</source>
        <translation>una dirección WebDAV</translation>
    </message>
    <message>
        <source>Name of the store</source>
        <translation>Nombre del almacén</translation>
    </message>
    <message>
        <source>letters, digits and hyphens, such as red-stick</source>
        <translation>letras, cifras y guiones, como memoria-roja</translation>
    </message>
    <message>
        <source>choose the folder</source>
        <translation>elegir la carpeta</translation>
    </message>
    <message>
        <source>User, if it asks for one</source>
        <translation>Usuario, si lo pide</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Kept on this device, for this user of it alone; not locked.</source>
        <translation>Se guarda en este dispositivo, solo para este usuario suyo; sin cerrar con llave.</translation>
    </message>
    <message>
        <source>Add the store</source>
        <translation>Añadir el almacén</translation>
    </message>
    <message>
        <source>leave it</source>
        <comment>adds no store</comment>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>Folder of the store</source>
        <translation>Carpeta del almacén</translation>
    </message>
    <message>
        <source>Certificate file of its authority; may stay empty</source>
        <translation>Archivo de certificado de su autoridad; puede quedar vacío</translation>
    </message>
    <message>
        <source>Only for a server of your own whose certificate this device does not know. Then no other authority is believed for it.</source>
        <translation>Solo para un servidor propio cuyo certificado este dispositivo no conoce. Entonces no se cree a ninguna otra autoridad para él.</translation>
    </message>
    <message>
        <source>choose the certificate file</source>
        <translation>elegir el archivo de certificado</translation>
    </message>
    <message>
        <source>Certificate of the authority</source>
        <translation>Certificado de la autoridad</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt)</source>
        <translation>Certificados (*.pem *.crt)</translation>
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
        <translation>Intercambiar ahora</translation>
    </message>
    <message>
        <source>Exchange now with %1</source>
        <comment>store</comment>
        <translation>Intercambiar ahora con %1</translation>
    </message>
    <message>
        <source>remove</source>
        <comment>a store from the list</comment>
        <translation>quitar</translation>
    </message>
    <message>
        <source>remove %1 from the list; what lies there stays</source>
        <comment>store</comment>
        <translation>quitar %1 de la lista; lo que hay allí se queda</translation>
    </message>
</context>
<context>
    <name>SuppliesPage</name>
    <message>
        <source>open findings and what is due</source>
        <translation>hallazgos abiertos y lo vencido</translation>
    </message>
    <message numerus="yes">
        <source>and what falls due in %n day(s)</source>
        <translation>
            <numerusform>y lo que vence en %n día</numerusform>
            <numerusform>y lo que vence en %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Para comprar</translation>
    </message>
    <message>
        <source>Nothing found or due uses anything up.</source>
        <translation>Nada de lo encontrado o por vencer gasta material.</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Hay</translation>
    </message>
    <message>
        <source>count it</source>
        <comment>what is on hand</comment>
        <translation>anotarlo</translation>
    </message>
</context>
<context>
    <name>Sync</name>
    <message>
        <source>writes everything, enrolls and revokes devices</source>
        <translation>anota todo, inscribe y revoca dispositivos</translation>
    </message>
    <message>
        <source>walks, marks and mends; decides no acceptance and no points</source>
        <translation>hace rondas, marca y arregla; no decide aceptaciones ni puntos</translation>
    </message>
    <message>
        <source>walks, reports and mends; licensed work only with a certificate number</source>
        <translation>hace rondas, informa y arregla; el trabajo con licencia solo con número de certificado</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>lee todo, no anota nada</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of the store are damaged and were left out.</source>
        <translation>
            <numerusform>%n archivo del almacén está dañado y se dejó fuera.</numerusform>
            <numerusform>%n archivos del almacén están dañados y se dejaron fuera.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) are known to be missing: another device still has to bring them.</source>
        <translation>
            <numerusform>Se sabe que falta %n archivo: otro dispositivo aún debe traerlo.</numerusform>
            <numerusform>Se sabe que faltan %n archivos: otro dispositivo aún debe traerlos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) cannot be opened here yet: they are kept.</source>
        <translation>
            <numerusform>%n archivo aún no se puede abrir aquí: se guarda.</numerusform>
            <numerusform>%n archivos aún no se pueden abrir aquí: se guardan.</numerusform>
        </translation>
    </message>
    <message>
        <source>A copy of this logbook went on elsewhere: both ways are kept.</source>
        <translation>Una copia de esta bitácora siguió en otro lugar: se conservan ambos caminos.</translation>
    </message>
    <message>
        <source>owner</source>
        <comment>role of a device</comment>
        <translation>propietario</translation>
    </message>
    <message>
        <source>helper</source>
        <comment>role of a device</comment>
        <translation>ayudante</translation>
    </message>
    <message>
        <source>technician</source>
        <comment>role of a device</comment>
        <translation>técnico</translation>
    </message>
    <message>
        <source>viewer</source>
        <comment>role of a device</comment>
        <translation>lector</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait to be sent.</source>
        <translation>
            <numerusform>%n entrada espera ser enviada.</numerusform>
            <numerusform>%n entradas esperan ser enviadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) are still on another device.</source>
        <translation>
            <numerusform>%n foto está aún en otro dispositivo.</numerusform>
            <numerusform>%n fotos están aún en otro dispositivo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) were written differently by two people.</source>
        <translation>
            <numerusform>%n cosa la anotaron de distinta manera dos personas.</numerusform>
            <numerusform>%n cosas las anotaron de distinta manera dos personas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) were set aside.</source>
        <translation>
            <numerusform>%n entrada fue apartada.</numerusform>
            <numerusform>%n entradas fueron apartadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>A rig shared with this device has not arrived yet: exchange with a store that has it.</source>
        <translation>Un vehículo compartido con este dispositivo aún no ha llegado: intercambie con un almacén que lo tenga.</translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s)</source>
        <comment>mark beside the word Logbook</comment>
        <translation>
            <numerusform>%n espera</numerusform>
            <numerusform>%n esperan</numerusform>
        </translation>
    </message>
    <message>
        <source>a rig waits</source>
        <comment>mark beside the word Logbook</comment>
        <translation>un vehículo espera</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) sent</source>
        <translation>
            <numerusform>%n entrada enviada</numerusform>
            <numerusform>%n entradas enviadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n received</source>
        <comment>entries</comment>
        <translation>
            <numerusform>%n recibida</numerusform>
            <numerusform>%n recibidas</numerusform>
        </translation>
    </message>
    <message>
        <source>Both have the same entries.</source>
        <translation>Ambos tienen las mismas entradas.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>entries sent, received</comment>
        <translation>%1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) sent.</source>
        <translation>
            <numerusform>%n foto enviada.</numerusform>
            <numerusform>%n fotos enviadas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) received.</source>
        <translation>
            <numerusform>%n foto recibida.</numerusform>
            <numerusform>%n fotos recibidas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n small picture(s) of photos received.</source>
        <translation>
            <numerusform>%n imagen pequeña de fotos recibida.</numerusform>
            <numerusform>%n imágenes pequeñas de fotos recibidas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of other devices were carried on.</source>
        <translation>
            <numerusform>%n archivo de otros dispositivos se llevó más allá.</numerusform>
            <numerusform>%n archivos de otros dispositivos se llevaron más allá.</numerusform>
        </translation>
    </message>
    <message>
        <source>looking at the store …</source>
        <translation>mirando el almacén …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>done, all</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>photos: %1</source>
        <comment>done of all</comment>
        <translation>fotos: %1</translation>
    </message>
    <message>
        <source>files of entries: %1</source>
        <comment>done of all</comment>
        <translation>archivos de entradas: %1</translation>
    </message>
    <message>
        <source>records of devices: %1</source>
        <comment>done of all</comment>
        <translation>registros de dispositivos: %1</translation>
    </message>
    <message>
        <source>last exchange %1</source>
        <comment>date and time</comment>
        <translation>último intercambio %1</translation>
    </message>
    <message>
        <source>no exchange yet</source>
        <translation>aún sin intercambio</translation>
    </message>
    <message>
        <source>nothing new since</source>
        <translation>nada nuevo desde entonces</translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(ies) since</source>
        <translation>
            <numerusform>%n entrada nueva desde entonces</numerusform>
            <numerusform>%n entradas nuevas desde entonces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) to leave there</source>
        <translation>
            <numerusform>%n entrada por dejar allí</numerusform>
            <numerusform>%n entradas por dejar allí</numerusform>
        </translation>
    </message>
    <message>
        <source>folder</source>
        <comment>kind of store</comment>
        <translation>carpeta</translation>
    </message>
    <message>
        <source>WebDAV address</source>
        <comment>kind of store</comment>
        <translation>dirección WebDAV</translation>
    </message>
    <message>
        <source>file to hand over</source>
        <comment>kind of store</comment>
        <translation>archivo para entregar</translation>
    </message>
    <message>
        <source>%1 (this device)</source>
        <comment>name of a device</comment>
        <translation>%1 (este dispositivo)</translation>
    </message>
    <message>
        <source>revoked</source>
        <comment>a device</comment>
        <translation>revocado</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date</comment>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <comment>date</comment>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>This rig&apos;s logbook is on this device only.</source>
        <translation>La bitácora de este vehículo está solo en este dispositivo.</translation>
    </message>
    <message>
        <source>This device was revoked: what is written here stays here.</source>
        <translation>Este dispositivo fue revocado: lo que se anota aquí se queda aquí.</translation>
    </message>
    <message>
        <source>This device waits to be enrolled by an owner.</source>
        <translation>Este dispositivo espera que un propietario lo inscriba.</translation>
    </message>
    <message>
        <source>This device is enrolled as %1.</source>
        <comment>role</comment>
        <translation>Este dispositivo está inscrito como %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n original(s) come with the next exchange with a store that has them.</source>
        <translation>
            <numerusform>%n original llega con el próximo intercambio con un almacén que lo tenga.</numerusform>
            <numerusform>%n originales llegan con el próximo intercambio con un almacén que los tenga.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SyncFault</name>
    <message>
        <source>The store is not there: %1</source>
        <translation>El almacén no está: %1</translation>
    </message>
    <message>
        <source>Put the stick in, or connect the drive, and exchange once more.</source>
        <translation>Ponga la memoria o conecte la unidad e intercambie otra vez.</translation>
    </message>
    <message>
        <source>The store holds another file of that name: %1</source>
        <translation>El almacén tiene otro archivo con ese nombre: %1</translation>
    </message>
    <message>
        <source>Nothing was overwritten. Look at the store, or use another one.</source>
        <translation>No se sobrescribió nada. Mire el almacén o use otro.</translation>
    </message>
    <message>
        <source>The store cannot be reached: %1</source>
        <translation>No se llega al almacén: %1</translation>
    </message>
    <message>
        <source>Nothing is lost. Exchange again where there is a network.</source>
        <translation>No se pierde nada. Intercambie de nuevo donde haya red.</translation>
    </message>
    <message>
        <source>The store or the disk refused: %1</source>
        <translation>El almacén o el disco se negó: %1</translation>
    </message>
    <message>
        <source>Nothing is lost. See that it is there, has room and may be written to, then exchange again.</source>
        <translation>No se pierde nada. Compruebe que está, que tiene espacio y que se puede escribir, e intercambie de nuevo.</translation>
    </message>
    <message>
        <source>A word is not as it was shown: %1</source>
        <translation>Una palabra no es como se mostró: %1</translation>
    </message>
    <message>
        <source>Look at this word again.</source>
        <translation>Mire otra vez esa palabra.</translation>
    </message>
    <message>
        <source>Words are missing, or are of two sets.</source>
        <translation>Faltan palabras, o son de dos códigos.</translation>
    </message>
    <message>
        <source>Type or paste all the words as they are shown.</source>
        <translation>Escriba o pegue todas las palabras como se muestran.</translation>
    </message>
    <message>
        <source>These words are no offer to share a rig.</source>
        <translation>Estas palabras no son una oferta para compartir un vehículo.</translation>
    </message>
    <message>
        <source>Type the words of the owner&apos;s device.</source>
        <translation>Escriba las palabras del dispositivo del propietario.</translation>
    </message>
    <message>
        <source>These words are no answer to the code shown here.</source>
        <translation>Estas palabras no responden al código que se muestra aquí.</translation>
    </message>
    <message>
        <source>Show the code again, and answer it on the other device once more.</source>
        <translation>Muestre el código de nuevo y respóndalo otra vez en el otro dispositivo.</translation>
    </message>
    <message>
        <source>The code stood ten minutes and is over, or a clock is wrong.</source>
        <translation>El código valió diez minutos y ha terminado, o un reloj está mal.</translation>
    </message>
    <message>
        <source>Show a new code.</source>
        <translation>Muestre un código nuevo.</translation>
    </message>
    <message>
        <source>Only an owner&apos;s device may do this.</source>
        <translation>Solo el dispositivo de un propietario puede hacerlo.</translation>
    </message>
    <message>
        <source>Do it on an owner&apos;s device.</source>
        <translation>Hágalo en el dispositivo de un propietario.</translation>
    </message>
    <message>
        <source>This is the last owner&apos;s device.</source>
        <translation>Este es el dispositivo del último propietario.</translation>
    </message>
    <message>
        <source>Enroll another owner first.</source>
        <translation>Inscriba antes a otro propietario.</translation>
    </message>
    <message>
        <source>This logbook shares that rig already, with other devices.</source>
        <translation>Esta bitácora ya comparte ese vehículo con otros dispositivos.</translation>
    </message>
    <message>
        <source>Use the sharing that is there, or a logbook of its own.</source>
        <translation>Use lo que ya se comparte, o una bitácora aparte.</translation>
    </message>
    <message>
        <source>This was settled meanwhile.</source>
        <translation>Esto se resolvió entretanto.</translation>
    </message>
    <message>
        <source>Nothing has to be done.</source>
        <translation>No hay que hacer nada.</translation>
    </message>
    <message>
        <source>There is a store named %1 already.</source>
        <translation>Ya hay un almacén llamado %1.</translation>
    </message>
    <message>
        <source>Give it another name.</source>
        <translation>Déle otro nombre.</translation>
    </message>
    <message>
        <source>The store needs a name of letters, digits and hyphens.</source>
        <translation>El almacén necesita un nombre de letras, cifras y guiones.</translation>
    </message>
    <message>
        <source>Type one.</source>
        <translation>Escriba uno.</translation>
    </message>
    <message>
        <source>This address cannot be used.</source>
        <translation>Esta dirección no se puede usar.</translation>
    </message>
    <message>
        <source>Write it as https://host/folder/, without a user or a password in it.</source>
        <translation>Escríbala como https://host/folder/, sin usuario ni contraseña.</translation>
    </message>
    <message>
        <source>This is no date: %1</source>
        <translation>Esto no es una fecha: %1</translation>
    </message>
    <message>
        <source>Write it as 2027-03-31.</source>
        <translation>Escríbala como 2027-03-31.</translation>
    </message>
    <message>
        <source>These words are no key on paper.</source>
        <translation>Estas palabras no son una clave en papel.</translation>
    </message>
    <message>
        <source>Type the 24 words of the paper.</source>
        <translation>Escriba las 24 palabras del papel.</translation>
    </message>
    <message>
        <source>This store has no rig of that key, or one with another mark: %1</source>
        <translation>Este almacén no tiene ningún vehículo de esa clave, o uno con otra marca: %1</translation>
    </message>
    <message>
        <source>Exchange once from a device that has the rig, or take another store. A rig with another mark was made up by somebody.</source>
        <translation>Intercambie una vez desde un dispositivo que tenga el vehículo, o use otro almacén. Un vehículo con otra marca lo inventó alguien.</translation>
    </message>
    <message>
        <source>Several rigs at this store name that key an owner: %1</source>
        <translation>Varios vehículos de este almacén dan esa clave por propietaria: %1</translation>
    </message>
    <message>
        <source>Type the mark that stands beside the words.</source>
        <translation>Escriba la marca que está al lado de las palabras.</translation>
    </message>
    <message>
        <source>No code was found in this picture.</source>
        <translation>No se encontró ningún código en esta imagen.</translation>
    </message>
    <message>
        <source>Take it straight on and near, without glare; or type the words.</source>
        <translation>Tómela de frente y de cerca, sin reflejos; o escriba las palabras.</translation>
    </message>
    <message>
        <source>This file is no picture that can be read: %1</source>
        <translation>Este archivo no es una imagen que se pueda leer: %1</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG picture.</source>
        <translation>Elija una imagen JPEG o PNG.</translation>
    </message>
</context>
<context>
    <name>SyncPage</name>
    <message>
        <source>Exchange</source>
        <comment>with other devices</comment>
        <translation>Intercambio</translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Nada espera.</translation>
    </message>
    <message>
        <source>Look at what differs</source>
        <translation>Mirar lo que difiere</translation>
    </message>
    <message>
        <source>both versions are kept until a person chooses</source>
        <translation>se conservan ambas versiones hasta que alguien elija</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Almacenes</translation>
    </message>
    <message>
        <source>No store yet. A store is a place where devices leave what is new for each other: a stick, a shared folder, a drive.</source>
        <translation>Aún no hay almacén. Un almacén es un lugar donde los dispositivos se dejan lo nuevo: una memoria, una carpeta compartida, una unidad.</translation>
    </message>
    <message>
        <source>add a store</source>
        <translation>añadir un almacén</translation>
    </message>
    <message>
        <source>Devices of this rig</source>
        <translation>Dispositivos de este vehículo</translation>
    </message>
    <message>
        <source>Share with one more device</source>
        <translation>Compartir con un dispositivo más</translation>
    </message>
    <message>
        <source>Share this rig</source>
        <translation>Compartir este vehículo</translation>
    </message>
    <message>
        <source>take part in a rig of another device</source>
        <translation>participar en un vehículo de otro dispositivo</translation>
    </message>
    <message>
        <source>What goes into a store is sealed: who finds a stick reads nothing of it. The logbook on this device is not locked beyond what the device itself does.</source>
        <translation>Lo que va a un almacén va sellado: quien encuentre una memoria no lee nada. La bitácora en este dispositivo no tiene más cierre que el del propio dispositivo.</translation>
    </message>
    <message>
        <source>ask for the photos in full</source>
        <translation>pedir las fotos completas</translation>
    </message>
    <message>
        <source>ask for the originals of photos that are on other devices</source>
        <translation>pedir los originales de fotos que están en otros dispositivos</translation>
    </message>
    <message>
        <source>Photos in full, when exchanging</source>
        <translation>Fotos completas, al intercambiar</translation>
    </message>
    <message>
        <source>those asked for</source>
        <comment>photos</comment>
        <translation>las pedidas</translation>
    </message>
    <message>
        <source>all of them: on Wi-Fi</source>
        <comment>photos</comment>
        <translation>todas: con Wi-Fi</translation>
    </message>
    <message>
        <source>Entries and small pictures of photos always come.</source>
        <translation>Las anotaciones y las imágenes pequeñas de las fotos siempre llegan.</translation>
    </message>
    <message>
        <source>make a key on paper</source>
        <translation>hacer una clave en papel</translation>
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
        <translation>El vehículo</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Look at a finding</source>
        <translation>Revisión de un hallazgo</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Arreglo</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Viaje</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Estancia</translation>
    </message>
    <message>
        <source>Weather record</source>
        <translation>Registro del tiempo</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Suceso</translation>
    </message>
    <message>
        <source>Own point</source>
        <translation>Punto propio</translation>
    </message>
    <message>
        <source>Hidden point</source>
        <translation>Punto oculto</translation>
    </message>
    <message>
        <source>Own interval</source>
        <translation>Intervalo propio</translation>
    </message>
    <message>
        <source>Drawing on a photo</source>
        <translation>Dibujo sobre una foto</translation>
    </message>
    <message>
        <source>Supply on hand</source>
        <translation>Existencia</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Aceptación</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>how it was looked at</source>
        <translation>cómo se revisó</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>medidas</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>grado</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>cuánto</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>defecto</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>qué se hizo</translation>
    </message>
    <message>
        <source>what was done, in words</source>
        <translation>qué se hizo, en palabras</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>coste</translation>
    </message>
    <message>
        <source>findings it closes</source>
        <translation>hallazgos que cierra</translation>
    </message>
    <message>
        <source>when it was finished</source>
        <translation>cuándo se terminó</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>measures</source>
        <translation>dimensiones</translation>
    </message>
    <message>
        <source>ratings</source>
        <translation>capacidades</translation>
    </message>
    <message>
        <source>tires</source>
        <translation>neumáticos</translation>
    </message>
    <message>
        <source>wheels</source>
        <translation>ruedas</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>months</source>
        <translation>meses</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>leyenda</translation>
    </message>
    <message>
        <source>lines drawn</source>
        <translation>líneas dibujadas</translation>
    </message>
    <message>
        <source>written by a device that does not belong to this rig</source>
        <translation>anotado por un dispositivo que no es de este vehículo</translation>
    </message>
    <message>
        <source>written after its device was revoked</source>
        <translation>anotado después de revocar su dispositivo</translation>
    </message>
    <message>
        <source>carried for another device by one that is no owner</source>
        <translation>traído por otro dispositivo que no es de un propietario</translation>
    </message>
    <message>
        <source>it belongs to another rig</source>
        <translation>es de otro vehículo</translation>
    </message>
    <message>
        <source>a viewer writes nothing</source>
        <translation>un lector no anota nada</translation>
    </message>
    <message>
        <source>only an owner decides this</source>
        <translation>esto solo lo decide un propietario</translation>
    </message>
    <message>
        <source>a technician does not change the rig</source>
        <translation>un técnico no cambia el vehículo</translation>
    </message>
    <message>
        <source>a mend of what is licensed needs a certificate number</source>
        <translation>un arreglo con licencia necesita un número de certificado</translation>
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
        <translation>quitado</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>value of a field</comment>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <comment>value of a field</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>value of a field</comment>
        <translation>nada</translation>
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
        <translation>dibujo del flanco de un neumático: 1 medida, 2 carga y presión máximas, 3 código de fecha</translation>
    </message>
</context>
<context>
    <name>TrackSketch</name>
    <message>
        <source>sketch of the track</source>
        <translation>trazo del recorrido</translation>
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
        <translation>%1 menos al año.</translation>
    </message>
    <message>
        <source>%1 more a year.</source>
        <translation>%1 más al año.</translation>
    </message>
    <message>
        <source>Likely to meet the limit about %1, from %2 to %3.</source>
        <translation>Probablemente llega al límite hacia el %1, entre el %2 y el %3.</translation>
    </message>
    <message>
        <source>There is no limit to hold it against.</source>
        <translation>No hay límite con que compararlo.</translation>
    </message>
    <message>
        <source>Too few readings for a line: three are wanted.</source>
        <translation>Pocas mediciones para una línea: hacen falta tres.</translation>
    </message>
    <message>
        <source>The last reading is past the limit.</source>
        <translation>La última medición pasó el límite.</translation>
    </message>
    <message>
        <source>It does not move toward the limit.</source>
        <translation>No va hacia el límite.</translation>
    </message>
    <message>
        <source>The limit is more than thirty years off by these readings; that says little.</source>
        <translation>Según estas mediciones el límite está a más de treinta años; eso dice poco.</translation>
    </message>
    <message>
        <source>It grew back. Was it replaced? Write the mend down.</source>
        <translation>Volvió a crecer. ¿Se cambió? Anote la reparación.</translation>
    </message>
    <message>
        <source>The readings do not tell when it meets the limit.</source>
        <translation>Las mediciones no dicen cuándo llega al límite.</translation>
    </message>
    <message>
        <source>%1 on %2.</source>
        <comment>reading, date</comment>
        <translation>%1 el %2.</translation>
    </message>
    <message>
        <source>The square lies far off and is left out.</source>
        <translation>El cuadrado queda muy lejos y no cuenta.</translation>
    </message>
    <message>
        <source>Open dots: before it was replaced.</source>
        <translation>Puntos huecos: antes del cambio.</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>reading, sentence</comment>
        <translation>%1, gráfica: %2</translation>
    </message>
</context>
<context>
    <name>TrendPage</name>
    <message>
        <source>No reading was taken here yet.</source>
        <translation>Aquí aún no se midió nada.</translation>
    </message>
    <message>
        <source>Readings over time</source>
        <translation>Lecturas en el tiempo</translation>
    </message>
    <message>
        <source>A reading is typed on a walk, at a line that measures something, such as the tires. Two of them make a trend.</source>
        <translation>Una lectura se escribe en una ronda, en una línea que mide algo, como los neumáticos. Dos hacen una tendencia.</translation>
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
        <translation>medido en el camino</translation>
    </message>
    <message>
        <source>from this rig&apos;s measured trips</source>
        <translation>de los viajes medidos de este vehículo</translation>
    </message>
    <message>
        <source>from the road told by hand; common practice</source>
        <translation>del camino dicho a mano; práctica común</translation>
    </message>
    <message>
        <source>no road told, nothing measured: a usual road is taken</source>
        <translation>ni camino dicho ni nada medido: se toma un camino corriente</translation>
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
        <translation>mitad %1 m/km, décimo más áspero desde %2 m/km, a lo largo de %3</translation>
    </message>
    <message>
        <source>an index of this rig alone: not calibrated</source>
        <translation>un índice solo de este vehículo: sin calibrar</translation>
    </message>
    <message>
        <source>the sensor met its end: at least so much</source>
        <translation>el sensor llegó a su tope: al menos tanto</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) that aged the seals like %1</source>
        <translation>
            <numerusform>%n día que envejeció los sellos como %1</numerusform>
            <numerusform>%n días que envejecieron los sellos como %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 that shook like %2</source>
        <comment>distances</comment>
        <translation>%1 que sacudieron como %2</translation>
    </message>
    <message>
        <source>Seals: like %1 to %2 days; estimated from the place&apos;s usual weather or its records.</source>
        <translation>Sellos: como %1 a %2 días; estimado del tiempo usual del lugar o de sus registros.</translation>
    </message>
    <message>
        <source>What the weather did is not known: the trip has no place, or there are no data for it.</source>
        <translation>No se sabe qué hizo el tiempo: el viaje no tiene lugar, o no hay datos para él.</translation>
    </message>
    <message>
        <source>Shake: like %1 to %2; %3.</source>
        <comment>distances, basis</comment>
        <translation>Sacudidas: como %1 a %2; %3.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Of it straight lines over gaps</source>
        <translation>De ello, rectas sobre huecos</translation>
    </message>
    <message>
        <source>Start to end</source>
        <translation>De inicio a fin</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Camino</translation>
    </message>
    <message>
        <source>Up and down</source>
        <translation>Subida y bajada</translation>
    </message>
    <message>
        <source>%1 up, %2 down</source>
        <comment>climb</comment>
        <translation>%1 de subida, %2 de bajada</translation>
    </message>
    <message>
        <source>Lowest and highest</source>
        <translation>Lo más bajo y lo más alto</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>altitudes</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Positions left out</source>
        <translation>Posiciones dejadas fuera</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Leído de</translation>
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
        <translation>%1 O</translation>
    </message>
    <message>
        <source>%1 E</source>
        <comment>east longitude</comment>
        <translation>%1 E</translation>
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
        <translation>Mapa del viaje, norte arriba: de %1 a %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n stop(s).</source>
        <translation>
            <numerusform>%n parada.</numerusform>
            <numerusform>%n paradas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>Aquí no se sabe dónde está el mar.</translation>
    </message>
    <message>
        <source>No coast is near.</source>
        <translation>No hay costa cerca.</translation>
    </message>
</context>
<context>
    <name>TripPage</name>
    <message>
        <source>No trip yet. A track from a phone or a receiver, as GPX or NMEA, makes one.</source>
        <translation>Todavía no hay viajes. Un recorrido de un teléfono o un receptor, en GPX o NMEA, hace uno.</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Traer un recorrido</translation>
    </message>
    <message>
        <source>This trip has no line to draw: it was written by hand, or its track held too few positions.</source>
        <translation>Este viaje no tiene línea que dibujar: se escribió a mano, o su recorrido tenía muy pocas posiciones.</translation>
    </message>
    <message>
        <source>North is up. Ring: start. Dot: end. Numbers: stops of five minutes or more. A broken line is a worse road.</source>
        <translation>El norte está arriba. Anillo: inicio. Punto: fin. Números: paradas de cinco minutos o más. Una línea cortada es un camino peor.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Paradas</translation>
    </message>
    <message>
        <source>take in another log of its shaking</source>
        <translation>traer otro registro de sus sacudidas</translation>
    </message>
    <message>
        <source>take in a log of its shaking</source>
        <translation>traer un registro de sus sacudidas</translation>
    </message>
    <message>
        <source>Coast: made from Natural Earth, public domain.</source>
        <translation>Costa: hecha con Natural Earth, dominio público.</translation>
    </message>
    <message>
        <source>Roughness along the way, m/km</source>
        <translation>Aspereza a lo largo del camino, m/km</translation>
    </message>
    <message>
        <source>From where the log began. Full bars: rough, over the upper broken line. Under the lower one: smooth. A gap: too slow, uneven or handled.</source>
        <translation>Desde donde empezó el registro. Barras llenas: áspero, sobre la línea discontinua de arriba. Bajo la de abajo: liso. Un hueco: demasiado lento, desigual o con el sensor en la mano.</translation>
    </message>
    <message>
        <source>Trips</source>
        <translation>Viajes</translation>
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
        <translation>O</translation>
    </message>
    <message>
        <source>E</source>
        <comment>east longitude</comment>
        <translation>E</translation>
    </message>
    <message>
        <source>maker&apos;s figure</source>
        <translation>cifra del fabricante</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>fitted to what was measured</source>
        <translation>ajustado a lo medido</translation>
    </message>
    <message>
        <source>before anything was measured</source>
        <translation>antes de medir nada</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculado</translation>
    </message>
    <message>
        <source>travel trailer</source>
        <translation>casa rodante</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <translation>quinta rueda</translation>
    </message>
    <message>
        <source>folding trailer</source>
        <translation>remolque plegable</translation>
    </message>
    <message>
        <source>teardrop</source>
        <translation>lágrima</translation>
    </message>
    <message>
        <source>truck camper</source>
        <translation>módulo sobre camioneta</translation>
    </message>
    <message>
        <source>motorhome</source>
        <translation>autocaravana</translation>
    </message>
    <message>
        <source>camper van</source>
        <translation>furgón camper</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a finding</comment>
        <translation>abierto</translation>
    </message>
    <message>
        <source>mended, waiting for a look that confirms it</source>
        <translation>reparado, espera una revisión que lo confirme</translation>
    </message>
    <message>
        <source>mended, and seen so</source>
        <translation>reparado, y visto así</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>ya no está, sin reparación</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>reemplazado</translation>
    </message>
    <message>
        <source>sealed again</source>
        <translation>sellado de nuevo</translation>
    </message>
    <message>
        <source>tightened to the maker&apos;s figure</source>
        <translation>apretado según el fabricante</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>limpiado</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>lubricado</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>ajustado</translation>
    </message>
    <message>
        <source>other work</source>
        <translation>otro trabajo</translation>
    </message>
    <message>
        <source>%1 can be read two ways. Write %2 or %3.</source>
        <translation>%1 puede leerse de dos maneras. Escriba %2 o %3.</translation>
    </message>
</context>
<context>
    <name>WaitingPhotos</name>
    <message>
        <source>No photo waits for its mark.</source>
        <translation>Ninguna foto espera su marca.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark; press those of this finding</source>
        <translation>
            <numerusform>%n foto espera su marca; toque la que sea de este hallazgo</numerusform>
            <numerusform>%n fotos esperan su marca; toque las de este hallazgo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark</source>
        <translation>
            <numerusform>%n foto espera su marca</numerusform>
            <numerusform>%n fotos esperan su marca</numerusform>
        </translation>
    </message>
    <message>
        <source>waiting, number %1</source>
        <comment>photo</comment>
        <translation>en espera, número %1</translation>
    </message>
    <message>
        <source>put away</source>
        <comment>a photo</comment>
        <translation>apartar</translation>
    </message>
    <message numerus="yes">
        <source>bring back %n put away</source>
        <comment>photos</comment>
        <translation>
            <numerusform>recuperar %n apartada</numerusform>
            <numerusform>recuperar %n apartadas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WalkBudget</name>
    <message>
        <source>Left out, though on the hold list: %1.</source>
        <comment>points</comment>
        <translation>Quedan fuera, aunque están en la lista de retención: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>points</comment>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Leaves out %1 of %2 points: %3.</source>
        <translation>Deja fuera %1 de %2 puntos: %3.</translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message numerus="yes">
        <source>%n line(s) left</source>
        <comment>of the walk</comment>
        <translation>
            <numerusform>queda %n línea</numerusform>
            <numerusform>quedan %n líneas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>stand; lines left</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>líneas</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>deshacer</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>a simple vista</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>parar aquí</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>emergencia</translation>
    </message>
</context>
<context>
    <name>WalkRow</name>
    <message>
        <source>%1, still open</source>
        <comment>kind of walk</comment>
        <translation>%1, todavía abierta</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, por %2</translation>
    </message>
</context>
<context>
    <name>WalkWords</name>
    <message>
        <source>could not look</source>
        <comment>act</comment>
        <translation>no pude ver</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>act</comment>
        <translation>no lleva</translation>
    </message>
    <message>
        <source>look again later</source>
        <comment>act</comment>
        <translation>más tarde</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>a simple vista</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>líneas</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>parar aquí</translation>
    </message>
    <message>
        <source>photos now, marks after</source>
        <translation>fotos ahora, marcas después</translation>
    </message>
</context>
<context>
    <name>WeighPicture</name>
    <message>
        <source>coupled</source>
        <comment>on the scale</comment>
        <translation>enganchado</translation>
    </message>
    <message>
        <source>with bars</source>
        <comment>on the scale</comment>
        <translation>con barras</translation>
    </message>
    <message>
        <source>alone</source>
        <comment>on the scale</comment>
        <translation>solo</translation>
    </message>
</context>
<context>
    <name>WentPage</name>
    <message>
        <source>How it went</source>
        <translation>Cómo fue</translation>
    </message>
    <message>
        <source>Of what</source>
        <comment>a plot is about it</comment>
        <translation>De qué</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>one of several plots</comment>
        <translation>Cuál</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando…</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>title, sentence</comment>
        <translation>%1, gráfica: %2</translation>
    </message>
    <message>
        <source>Press the plot, or go along it, to read its numbers.</source>
        <translation>Pulse la gráfica, o recórrala, para leer sus números.</translation>
    </message>
    <message>
        <source>earlier</source>
        <comment>go back in time along a plot</comment>
        <translation>antes</translation>
    </message>
    <message>
        <source>later</source>
        <comment>go on in time along a plot</comment>
        <translation>después</translation>
    </message>
    <message>
        <source>the last two years alone</source>
        <translation>solo los dos últimos años</translation>
    </message>
    <message>
        <source>every month there is</source>
        <translation>todos los meses que hay</translation>
    </message>
    <message>
        <source>fold the numbers</source>
        <translation>plegar los números</translation>
    </message>
    <message>
        <source>all its numbers</source>
        <translation>todos sus números</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Guardar: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Escrito: %1</translation>
    </message>
</context>
<context>
    <name>WhatIfPage</name>
    <message>
        <source>What if</source>
        <translation>Y si</translation>
    </message>
    <message>
        <source>Say where it would stand and how far it would go: the dates that move are worked out. Nothing of this is written into the logbook.</source>
        <translation>Diga dónde estaría y cuánto rodaría: se calculan las fechas que se mueven. Nada de esto se escribe en la bitácora.</translation>
    </message>
    <message>
        <source>take away</source>
        <comment>a leg of the plan</comment>
        <translation>quitar</translation>
    </message>
    <message>
        <source>take away %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>One leg more</source>
        <translation>Un tramo más</translation>
    </message>
    <message>
        <source>The first leg</source>
        <translation>El primer tramo</translation>
    </message>
</context>
<context>
    <name>WheelMap</name>
    <message>
        <source>front</source>
        <comment>of the rig, on a drawing from above</comment>
        <translation>frente</translation>
    </message>
    <message>
        <source>%1: no reading was taken yet</source>
        <comment>a wheel</comment>
        <translation>%1: todavía no hay lectura</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>sus lecturas en el tiempo</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>cifra del fabricante: sin escribir</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>limits, whose</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>low</source>
        <comment>a reading</comment>
        <translation>baja</translation>
    </message>
    <message>
        <source>high</source>
        <comment>a reading</comment>
        <translation>alta</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sin lectura</translation>
    </message>
</context>
<context>
    <name>WhyFacts</name>
    <message>
        <source>pass, at a glance</source>
        <translation>pasa, de un vistazo</translation>
    </message>
    <message>
        <source>pass, measured</source>
        <translation>pasa, medido</translation>
    </message>
    <message>
        <source>pass, looked at</source>
        <translation>pasa, mirado</translation>
    </message>
    <message>
        <source>attention</source>
        <translation>atención</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>no instalado</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>no se pudo mirar: %1</translation>
    </message>
    <message>
        <source>time, as it ages it</source>
        <translation>el tiempo, según lo envejece</translation>
    </message>
    <message>
        <source>distance, as the road uses it up</source>
        <translation>la distancia, según la gasta el camino</translation>
    </message>
    <message>
        <source>nobody has looked at it yet</source>
        <translation>nadie lo ha mirado todavía</translation>
    </message>
    <message>
        <source>its readings, on their way to a limit</source>
        <translation>sus lecturas, camino de un límite</translation>
    </message>
    <message>
        <source>each move</source>
        <translation>cada vez que se mueve</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervalo</translation>
    </message>
    <message>
        <source>What makes it due</source>
        <translation>Qué le pone plazo</translation>
    </message>
    <message>
        <source>Rests on</source>
        <comment>what a figure rests on</comment>
        <translation>Se apoya en</translation>
    </message>
    <message>
        <source>Time to look from</source>
        <translation>Hora de mirar desde</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>what, who</comment>
        <translation>%1, por %2</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Nothing has a date yet: dates come with the first walk.</source>
        <translation>Nada tiene fecha todavía: las fechas llegan con la primera ronda.</translation>
    </message>
    <message>
        <source>How the date comes about</source>
        <translation>Cómo sale la fecha</translation>
    </message>
    <message>
        <source>From the catalogue&apos;s date down: a step to the left is sooner, to the right later. Ring: likely, on its line from early to late. Upright: today.</source>
        <translation>Desde la fecha del catálogo hacia abajo: un paso a la izquierda es antes, a la derecha después. Anillo: probable, en su línea de temprano a tarde. Vertical: hoy.</translation>
    </message>
    <message>
        <source>What it goes by</source>
        <translation>Por qué se rige</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>sus lecturas en el tiempo</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>y si va a otro lugar</translation>
    </message>
    <message>
        <source>Last looks and mends</source>
        <translation>Últimas miradas y arreglos</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Ninguna todavía.</translation>
    </message>
    <message>
        <source>What the weather is taken from</source>
        <translation>De dónde se toma el tiempo</translation>
    </message>
    <message>
        <source>Where the catalogue has it from</source>
        <translation>De dónde lo tiene el catálogo</translation>
    </message>
    <message>
        <source>Why it is due then</source>
        <translation>Por qué toca entonces</translation>
    </message>
</context>
<context>
    <name>WhyPicture</name>
    <message>
        <source>by the catalogue alone</source>
        <translation>solo por el catálogo</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The catalogue alone: %1.</source>
        <translation>El catálogo solo: %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>small causes together</source>
        <translation>causas pequeñas juntas</translation>
    </message>
    <message>
        <source>Likely: %1.</source>
        <translation>Probable: %1.</translation>
    </message>
</context>
<context>
    <name>ZoomRow</name>
    <message>
        <source>drawing nearer</source>
        <translation>dibujo más cerca</translation>
    </message>
    <message>
        <source>drawing farther</source>
        <translation>dibujo más lejos</translation>
    </message>
    <message>
        <source>whole</source>
        <comment>the whole drawing</comment>
        <translation>entero</translation>
    </message>
    <message>
        <source>left</source>
        <comment>move the drawing</comment>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <comment>move the drawing</comment>
        <translation>derecha</translation>
    </message>
    <message>
        <source>up</source>
        <comment>move the drawing</comment>
        <translation>arriba</translation>
    </message>
    <message>
        <source>down</source>
        <comment>move the drawing</comment>
        <translation>abajo</translation>
    </message>
    <message>
        <source>every finding ever</source>
        <translation>todo hallazgo desde siempre</translation>
    </message>
</context>
<context>
    <name>snugwalk::BenchModel</name>
    <message>
        <source>To keep it, start a walk and mark “%1” first.</source>
        <comment>a point</comment>
        <translation>Para guardarlo, empiece una ronda y marque antes «%1».</translation>
    </message>
    <message>
        <source>To keep it, mark “%1” on this walk first: what it got is said by a person.</source>
        <comment>a point</comment>
        <translation>Para guardarlo, marque antes «%1» en esta ronda: lo que obtuvo lo dice una persona.</translation>
    </message>
    <message>
        <source>“%1” is on attention: its readings go with the finding.</source>
        <comment>a point</comment>
        <translation>«%1» está en atención: sus lecturas van con el hallazgo.</translation>
    </message>
    <message>
        <source>%1, on “%2”</source>
        <comment>reading, point</comment>
        <translation>%1, en «%2»</translation>
    </message>
    <message>
        <source>Still to type: %1.</source>
        <translation>Falta escribir: %1.</translation>
    </message>
    <message>
        <source>Kept on this walk: %1.</source>
        <translation>Guardado en esta ronda: %1.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BookModel</name>
    <message>
        <source>There are no two walks to lay side by side yet.</source>
        <translation>Todavía no hay dos rondas para poner lado a lado.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BooksModel</name>
    <message>
        <source>Making the invented rig …</source>
        <translation>Haciendo el vehículo inventado …</translation>
    </message>
    <message>
        <source>Making the invented rig: %1 of %2</source>
        <translation>Haciendo el vehículo inventado: %1 de %2</translation>
    </message>
    <message>
        <source>The invented rig is gone from this device.</source>
        <translation>El vehículo inventado ya no está en este dispositivo.</translation>
    </message>
    <message>
        <source>Copying the logbook with its photos …</source>
        <translation>Copiando la bitácora con sus fotos …</translation>
    </message>
    <message>
        <source>Copied with its photos: %1</source>
        <translation>Copiada con sus fotos: %1</translation>
    </message>
    <message>
        <source>Copying and checking the backup …</source>
        <translation>Copiando y comprobando la copia …</translation>
    </message>
    <message>
        <source>Checked and opened: %1</source>
        <translation>Comprobada y abierta: %1</translation>
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
        <translation>Escriba primero la longitud, por ejemplo 120 mm o 4 3/4 in.</translation>
    </message>
    <message>
        <source>Not understood: %1. Write it for example as 120 mm or 4 3/4 in.</source>
        <translation>No se entiende: %1. Escríbala por ejemplo como 120 mm o 4 3/4 in.</translation>
    </message>
</context>
<context>
    <name>snugwalk::DueModel</name>
    <message>
        <source>before each move</source>
        <translation>antes de cada salida</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>todavía sin revisar</translation>
    </message>
    <message numerus="yes">
        <source>past due %n days</source>
        <translation>
            <numerusform>vencido hace %n día</numerusform>
            <numerusform>vencido hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>due now, at the latest %1</source>
        <translation>toca ahora, a más tardar %1</translation>
    </message>
    <message>
        <source>likely %1, from %2 to %3</source>
        <translation>probable %1, de %2 a %3</translation>
    </message>
    <message>
        <source>Nothing falls due within a month.</source>
        <translation>Nada vence dentro de un mes.</translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n está vencido.</numerusform>
            <numerusform>%n están vencidos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fall due within a month.</source>
        <translation>
            <numerusform>%n vence dentro de un mes.</numerusform>
            <numerusform>%n vencen dentro de un mes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not looked at yet.</source>
        <translation>
            <numerusform>%n todavía no se revisó.</numerusform>
            <numerusform>%n todavía no se revisaron.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) are due sooner than by the catalogue alone.</source>
        <translation>
            <numerusform>%n punto tiene plazo antes que solo por el catálogo.</numerusform>
            <numerusform>%n puntos tienen plazo antes que solo por el catálogo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Moved most: %1, %2.</source>
        <comment>point, 1.3 months sooner: causes</comment>
        <translation>El que más se movió: %1, %2.</translation>
    </message>
</context>
<context>
    <name>snugwalk::FindingModel</name>
    <message>
        <source>gone</source>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>mend soon, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>reparar pronto, %1</translation>
    </message>
    <message>
        <source>watch, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>vigilar, %1</translation>
    </message>
    <message>
        <source>Concern %1, between %2 and %3, of 100.</source>
        <translation>Preocupación %1, entre %2 y %3, de 100.</translation>
    </message>
    <message>
        <source>may be as bad as the first of its kind</source>
        <comment>a tie</comment>
        <translation>puede estar tan mal como el primero de su clase</translation>
    </message>
</context>
<context>
    <name>snugwalk::IntakeModel</name>
    <message>
        <source>a trip</source>
        <translation>un viaje</translation>
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
        <translation>%1, escrito %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::PaperModel</name>
    <message>
        <source>key on paper of %1</source>
        <comment>date</comment>
        <translation>clave en papel de %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::PlotsModel</name>
    <message>
        <source>the worst of the rig</source>
        <translation>lo peor del vehículo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>picture, PNG</source>
        <comment>kind of file</comment>
        <translation>imagen, PNG</translation>
    </message>
    <message>
        <source>drawing, SVG</source>
        <comment>kind of file</comment>
        <translation>dibujo, SVG</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>tabla, CSV</translation>
    </message>
</context>
<context>
    <name>snugwalk::PointsModel</name>
    <message numerus="yes">
        <source>%n point(s)</source>
        <comment>of a rig</comment>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n puntos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n propio</numerusform>
            <numerusform>%n propios</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hidden</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n oculto</numerusform>
            <numerusform>%n ocultos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at an interval of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n con intervalo propio</numerusform>
            <numerusform>%n con intervalo propio</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugwalk::PositionModel</name>
    <message>
        <source>no position</source>
        <translation>sin posición</translation>
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
        <translation>página web</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>tabla, CSV</translation>
    </message>
    <message>
        <source>calendar</source>
        <comment>kind of file</comment>
        <translation>calendario</translation>
    </message>
    <message>
        <source>map data, GeoJSON</source>
        <comment>kind of file</comment>
        <translation>datos de mapa, GeoJSON</translation>
    </message>
    <message>
        <source>the last one</source>
        <comment>which walk</comment>
        <translation>el último</translation>
    </message>
    <message>
        <source>the one that suits</source>
        <comment>which earlier walk</comment>
        <translation>el que corresponde</translation>
    </message>
</context>
<context>
    <name>snugwalk::RigModel</name>
    <message>
        <source>Go on with the walk</source>
        <translation>Seguir con la ronda</translation>
    </message>
    <message>
        <source>Start a walk</source>
        <translation>Empezar una ronda</translation>
    </message>
    <message>
        <source>every line has a mark</source>
        <translation>cada línea tiene su marca</translation>
    </message>
    <message>
        <source>at %1, %2 left</source>
        <comment>line of the walk, number of lines</comment>
        <translation>en %1, faltan %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::Session</name>
    <message>
        <source>one person</source>
        <comment>who looked</comment>
        <translation>una persona</translation>
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
        <translation>%1, vence</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what for, how much</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <comment>amount</comment>
        <translation>hacen falta %1</translation>
    </message>
    <message>
        <source>%1 on hand</source>
        <comment>amount</comment>
        <translation>hay %1</translation>
    </message>
    <message>
        <source>get %1</source>
        <comment>how many pieces</comment>
        <translation>conseguir %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::TapeModel</name>
    <message>
        <source>at a glance</source>
        <translation>a simple vista</translation>
    </message>
</context>
<context>
    <name>snugwalk::TripModel</name>
    <message>
        <source>A trip</source>
        <translation>Un viaje</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>date, times</comment>
        <translation>%1, de %2 a %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::WalkModel</name>
    <message>
        <source>%1 of %2 lines, %3 left</source>
        <translation>%1 de %2 líneas, faltan %3</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhatIfModel</name>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>under a roof</source>
        <translation>bajo techo</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>a la intemperie</translation>
    </message>
    <message>
        <source>%1 driven, road: %2</source>
        <translation>%1 rodados, camino: %2</translation>
    </message>
    <message>
        <source>No date moves.</source>
        <translation>Ninguna fecha se mueve.</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) come sooner.</source>
        <translation>
            <numerusform>%n fecha llega antes.</numerusform>
            <numerusform>%n fechas llegan antes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) go later.</source>
        <translation>
            <numerusform>%n fecha se va a después.</numerusform>
            <numerusform>%n fechas se van a después.</numerusform>
        </translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>un día antes</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>un día después</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, cause</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, as usual %2</source>
        <comment>dates</comment>
        <translation>%1, como de costumbre %2</translation>
    </message>
    <message>
        <source>Another leg has some of these days.</source>
        <translation>Otro tramo tiene algunos de estos días.</translation>
    </message>
    <message>
        <source>Change the days, or take the other leg away.</source>
        <translation>Cambie los días o quite el otro tramo.</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhyModel</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>temprano %1, probable %2, tarde %3</translation>
    </message>
</context>
</TS>
