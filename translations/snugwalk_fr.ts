<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AboutPage</name>
    <message>
        <source>Temperature and rain: Legates and Willmott 1989 and CRU CL 2.0 (New, Lister, Hulme, Makin 2002), as mapped by Marble; adapted. Licence: CC BY-SA 3.0.</source>
        <translation>Température et pluie : Legates et Willmott 1989 et CRU CL 2.0 (New, Lister, Hulme, Makin 2002), selon les cartes de Marble ; adaptées. Licence : CC BY-SA 3.0.</translation>
    </message>
    <message>
        <source>Heights and sea air: ETOPO5 and COADS, NOAA, as packed with Ferret.</source>
        <translation>Altitudes et air marin : ETOPO5 et COADS, NOAA, tels que fournis avec Ferret.</translation>
    </message>
    <message>
        <source>Coastline: made with Natural Earth, public domain.</source>
        <translation>Côtes : faites avec Natural Earth, domaine public.</translation>
    </message>
    <message>
        <source>The invented rig, its tracks and photos: made for this program, CC0 1.0.</source>
        <translation>Le véhicule inventé, ses traces et ses photos : faits pour ce programme, CC0 1.0.</translation>
    </message>
    <message>
        <source>public domain</source>
        <translation>domaine public</translation>
    </message>
    <message>
        <source>About</source>
        <translation>À propos</translation>
    </message>
    <message>
        <source>Looks after a rig without a network: what was looked at, by whom, what was found. Nothing leaves this device unless you exchange or copy it.</source>
        <translation>Suit un véhicule sans réseau : ce qui a été examiné, par qui, ce qui a été trouvé. Rien ne quitte cet appareil si vous ne l&apos;échangez ou ne le copiez pas.</translation>
    </message>
    <message>
        <source>Licence of the program: Apache 2.0. It comes without any warranty.</source>
        <translation>Licence du programme : Apache 2.0. Il est fourni sans aucune garantie.</translation>
    </message>
    <message>
        <source>Where data come from</source>
        <translation>D&apos;où viennent les données</translation>
    </message>
    <message>
        <source>What it is built with, under these licences</source>
        <translation>Avec quoi il est fait, sous ces licences</translation>
    </message>
    <message>
        <source>Place names: GeoNames (geonames.org), a choice of them with rounded coordinates. Licence: CC BY 4.0, creativecommons.org/licenses/by/4.0.</source>
        <translation>Noms de lieux : GeoNames (geonames.org), un choix aux coordonnées arrondies. Licence : CC BY 4.0, creativecommons.org/licenses/by/4.0.</translation>
    </message>
</context>
<context>
    <name>AcceptPage</name>
    <message>
        <source>Nothing is on hold that could be accepted. A hold for something found cannot be accepted by anyone.</source>
        <translation>Rien n&apos;est à l&apos;arrêt qui puisse être accepté. Un arrêt pour une chose trouvée ne peut être accepté par personne.</translation>
    </message>
    <message>
        <source>One&apos;s own decision</source>
        <translation>Propre décision</translation>
    </message>
    <message>
        <source>I could not look at %1 because %2. I know that %3 may follow. I move it once, today, on my own decision.</source>
        <comment>point, reason, what may follow</comment>
        <translation>Je n&apos;ai pas pu examiner %1 car %2. Je sais ce qui peut suivre : %3. Je le déplace une fois, aujourd&apos;hui, de ma propre décision.</translation>
    </message>
    <message>
        <source>because</source>
        <comment>I could not look because</comment>
        <translation>car</translation>
    </message>
    <message>
        <source>what may follow</source>
        <translation>ce qui peut suivre</translation>
    </message>
    <message>
        <source>Written down as decided by %1. It ends when the rig is uncoupled, after 24 hours at the latest, and stands on the slip.</source>
        <translation>Écrit comme décidé par %1. Cela finit au dételage, au plus tard après 24 heures, et figure sur la fiche.</translation>
    </message>
    <message>
        <source>First write in the settings who looks.</source>
        <translation>Écrivez d&apos;abord dans les réglages qui examine.</translation>
    </message>
    <message>
        <source>Do not move it</source>
        <translation>Ne pas rouler</translation>
    </message>
    <message>
        <source>I decide so</source>
        <translation>Je le décide ainsi</translation>
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
        <translation>Un point à vous</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Que regarder</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>When it passes</source>
        <translation>Quand il passe</translation>
    </message>
    <message>
        <source>Where one stands</source>
        <translation>Où l&apos;on se place</translation>
    </message>
    <message>
        <source>Part of the rig</source>
        <translation>Partie du véhicule</translation>
    </message>
    <message>
        <source>What fails with it</source>
        <translation>Ce qui en souffre s&apos;il lâche</translation>
    </message>
    <message>
        <source>Every how many months</source>
        <translation>Tous les combien de mois</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Toutes les combien de distance</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>par exemple 10 000 km ou 6000 mi</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>L&apos;ajouter</translation>
    </message>
    <message>
        <source>first tell what, where, what fails with it, and how often</source>
        <translation>dites d&apos;abord quoi, où, ce qui en souffre et tous les combien</translation>
    </message>
</context>
<context>
    <name>AsideRow</name>
    <message>
        <source>Set aside: %1.</source>
        <comment>reason</comment>
        <translation>Mis de côté : %1.</translation>
    </message>
    <message>
        <source>take it over</source>
        <comment>an entry that was set aside</comment>
        <translation>la reprendre</translation>
    </message>
    <message>
        <source>take over: %1</source>
        <comment>entry</comment>
        <translation>reprendre : %1</translation>
    </message>
</context>
<context>
    <name>BeadPicture</name>
    <message>
        <source>section, to scale; the joint is %1 long</source>
        <translation>coupe à l&apos;échelle ; la jonction fait %1 de long</translation>
    </message>
</context>
<context>
    <name>BenchField</name>
    <message>
        <source>%1, if known</source>
        <comment>a figure that may stay empty</comment>
        <translation>%1, si connu</translation>
    </message>
</context>
<context>
    <name>BenchInputs</name>
    <message>
        <source>without a unit: %1</source>
        <comment>unit symbol</comment>
        <translation>sans unité : %1</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>séparés par des points-virgules</translation>
    </message>
    <message>
        <source>written as 2026-11-24</source>
        <translation>écrit comme 2026-11-24</translation>
    </message>
    <message>
        <source>left empty: %1</source>
        <comment>the usual figure</comment>
        <translation>si vide : %1</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <comment>heading: worked computations</comment>
        <translation>Établi</translation>
    </message>
    <message>
        <source>Numbers worked out on the spot. The maker&apos;s figure goes before any of them.</source>
        <translation>Des nombres calculés sur place. La valeur du constructeur passe avant tous.</translation>
    </message>
    <message>
        <source>to the questions on %1</source>
        <translation>aux questions sur %1</translation>
    </message>
</context>
<context>
    <name>BenchPictures</name>
    <message>
        <source>trailer&apos;s axles</source>
        <translation>essieux de remorque</translation>
    </message>
    <message>
        <source>%1: coupled %2</source>
        <comment>axle, mass</comment>
        <translation>%1 : attelé %2</translation>
    </message>
    <message>
        <source>%1: alone %2</source>
        <comment>axle, mass</comment>
        <translation>%1 : seul %2</translation>
    </message>
    <message>
        <source>Section of the bead: %1 wide, %2 high, %3 long</source>
        <translation>Coupe du cordon : %1 de large, %2 de haut, %3 de long</translation>
    </message>
    <message>
        <source>tow vehicle, front axle</source>
        <translation>véhicule tracteur, essieu avant</translation>
    </message>
    <message>
        <source>tow vehicle, rear axle</source>
        <translation>véhicule tracteur, essieu arrière</translation>
    </message>
    <message>
        <source>Tow vehicle and trailer on the scale, one pad an axle: nothing typed yet.</source>
        <translation>Véhicule tracteur et remorque sur la bascule, un plateau par essieu : rien de saisi encore.</translation>
    </message>
</context>
<context>
    <name>BenchWords</name>
    <message>
        <source>%1 to %2, in %3 of 100 cases</source>
        <comment>a range, how sure</comment>
        <translation>%1 à %2, dans %3 cas sur 100</translation>
    </message>
    <message>
        <source>It can be %1 to %2.</source>
        <comment>limits of a figure</comment>
        <translation>Peut aller de %1 à %2.</translation>
    </message>
    <message>
        <source>It is at least %1.</source>
        <translation>Au moins %1.</translation>
    </message>
    <message>
        <source>It is at most %1.</source>
        <translation>Au plus %1.</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Vérifiez le nombre et son unité.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out.</source>
        <translation>Au-delà de ce qui se calcule.</translation>
    </message>
    <message>
        <source>Not a date. Write it as 2026-11-24.</source>
        <translation>Ce n&apos;est pas une date. Écrivez-la comme 2026-11-24.</translation>
    </message>
    <message>
        <source>Choose one of the words.</source>
        <translation>Choisissez un des mots.</translation>
    </message>
    <message>
        <source>Not understood. Write a whole number.</source>
        <translation>Pas compris. Écrivez un nombre entier.</translation>
    </message>
    <message>
        <source>Not understood. Write it as in the worked example.</source>
        <translation>Pas compris. Écrivez comme dans l&apos;exemple.</translation>
    </message>
    <message>
        <source>Not understood. Write the number alone.</source>
        <translation>Pas compris. Écrivez le nombre seul.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a figure, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Taken as usual: %1.</source>
        <translation>Pris d&apos;habitude : %1.</translation>
    </message>
    <message>
        <source>Not understood. Write the number with its unit, %1 or another.</source>
        <translation>Pas compris. Écrivez le nombre avec son unité, %1 ou une autre.</translation>
    </message>
    <message>
        <source>%1. Read it again.</source>
        <comment>what does not go together</comment>
        <translation>%1. Relisez.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out. Read it again.</source>
        <translation>Au-delà de ce qui se calcule. Relisez.</translation>
    </message>
    <message>
        <source>This does not go with the other figures. Read it again.</source>
        <translation>Cela ne va pas avec les autres valeurs. Relisez.</translation>
    </message>
</context>
<context>
    <name>BookRows</name>
    <message numerus="yes">
        <source>%n pass</source>
        <translation>
            <numerusform>%n passe</numerusform>
            <numerusform>%n passes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n attention</source>
        <translation>
            <numerusform>%n attention</numerusform>
            <numerusform>%n attentions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not look</source>
        <translation>
            <numerusform>%n non vu</numerusform>
            <numerusform>%n non vus</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not fitted</source>
        <translation>
            <numerusform>%n non monté</numerusform>
            <numerusform>%n non montés</numerusform>
        </translation>
    </message>
    <message>
        <source>road not known</source>
        <translation>route inconnue</translation>
    </message>
    <message>
        <source>smooth road</source>
        <translation>route lisse</translation>
    </message>
    <message>
        <source>broken road</source>
        <translation>route dégradée</translation>
    </message>
    <message>
        <source>gravel</source>
        <translation>gravier</translation>
    </message>
    <message>
        <source>washboard</source>
        <translation>tôle ondulée</translation>
    </message>
    <message>
        <source>track</source>
        <translation>piste</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) not looked at</source>
        <translation>
            <numerusform>%n ligne non examinée</numerusform>
            <numerusform>%n lignes non examinées</numerusform>
        </translation>
    </message>
    <message>
        <source>from: %1; to: %2</source>
        <comment>places</comment>
        <translation>départ : %1 ; arrivée : %2</translation>
    </message>
</context>
<context>
    <name>BooksBlock</name>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Carnets (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Carnet</translation>
    </message>
    <message>
        <source>Logbooks of this device</source>
        <translation>Carnets de cet appareil</translation>
    </message>
    <message>
        <source>back it up: copy it with its photos</source>
        <translation>le sauvegarder : le copier avec ses photos</translation>
    </message>
    <message>
        <source>bring a backup back, as a logbook of its own</source>
        <translation>reprendre une sauvegarde, comme carnet à part</translation>
    </message>
    <message>
        <source>look round an invented rig</source>
        <translation>visiter un véhicule inventé</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>ôter le véhicule inventé</translation>
    </message>
    <message>
        <source>Where the copy goes</source>
        <translation>Où va la copie</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>Une sauvegarde d&apos;un carnet</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>Photos now, marks after</source>
        <translation>Photos maintenant, marques après</translation>
    </message>
    <message>
        <source>Photo of the finding</source>
        <translation>Photo du constat</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>ce que voit la caméra</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>La caméra démarre …</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Prendre la photo</translation>
    </message>
    <message>
        <source>The last photo, faint, to stand where it was taken</source>
        <translation>La dernière photo, en filigrane, pour se placer là où elle fut prise</translation>
    </message>
    <message>
        <source>shown</source>
        <comment>the faint photo</comment>
        <translation>affichée</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>the faint photo</comment>
        <translation>ôtée</translation>
    </message>
    <message>
        <source>Both hands for the ladder: take them here, or from a camera on a pole by file. Mark with both feet on the ground.</source>
        <translation>Les deux mains pour l&apos;échelle : prenez-les ici, ou par fichier d&apos;une caméra sur perche. Marquez les deux pieds au sol.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Retour au constat</translation>
    </message>
    <message>
        <source>Light of the camera</source>
        <translation>Lampe de l&apos;appareil photo</translation>
    </message>
    <message>
        <source>on</source>
        <comment>the light</comment>
        <translation>allumée</translation>
    </message>
    <message>
        <source>off</source>
        <comment>the light</comment>
        <translation>éteinte</translation>
    </message>
</context>
<context>
    <name>CautionCard</name>
    <message>
        <source>read: go on</source>
        <comment>cautions were read</comment>
        <translation>lu : continuer</translation>
    </message>
    <message>
        <source>read: the next</source>
        <comment>a caution was read</comment>
        <translation>lu : la suivante</translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>%1: %2</source>
        <comment>question: answer</comment>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>CodeWords</name>
    <message>
        <source>The same as words</source>
        <translation>Pareil en mots</translation>
    </message>
    <message>
        <source>copy the words</source>
        <translation>copier les mots</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Two walks side by side</source>
        <translation>Deux tours côte à côte</translation>
    </message>
    <message>
        <source>Walk round twice, on different days: then this page tells what is new, worse or mended since.</source>
        <translation>Faites deux tours, à des jours différents : cette page dit alors ce qui est nouveau, pire ou réparé depuis.</translation>
    </message>
</context>
<context>
    <name>CompareRow</name>
    <message>
        <source>%1: then %2, now %3, %4</source>
        <comment>point: state, state, change</comment>
        <translation>%1 : avant %2, maintenant %3, %4</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>new</source>
        <translation>nouveau</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>pire</translation>
    </message>
    <message>
        <source>same</source>
        <translation>pareil</translation>
    </message>
    <message>
        <source>better</source>
        <translation>mieux</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>réparé</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>disparu, sans réparation</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>non examiné</translation>
    </message>
    <message>
        <source>first look</source>
        <translation>premier examen</translation>
    </message>
    <message>
        <source>no longer fitted</source>
        <translation>n&apos;est plus monté</translation>
    </message>
    <message>
        <source>%1: %2, was %3</source>
        <comment>reading, now, then</comment>
        <translation>%1 : %2, était %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>defect: change</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1, %2, against %3</source>
        <comment>kind of walk, date now, date then</comment>
        <translation>%1, %2, face à %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>reading: faster than expected</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Held against: %1.</source>
        <comment>how the earlier walk was found</comment>
        <translation>Comparé à : %1.</translation>
    </message>
    <message>
        <source>Added to the rig since: %1.</source>
        <translation>Ajouté au véhicule depuis : %1.</translation>
    </message>
    <message>
        <source>Taken from the rig since: %1.</source>
        <translation>Retiré du véhicule depuis : %1.</translation>
    </message>
    <message>
        <source>Changed on the rig since: %1.</source>
        <translation>Changé sur le véhicule depuis : %1.</translation>
    </message>
    <message>
        <source>No longer fitted: %1.</source>
        <translation>N&apos;est plus monté : %1.</translation>
    </message>
    <message>
        <source>Fitted since: %1.</source>
        <translation>Monté depuis : %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n nouveau</numerusform>
            <numerusform>%n nouveaux</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n worse</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n pire</numerusform>
            <numerusform>%n pires</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n same</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n pareil</numerusform>
            <numerusform>%n pareils</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n better</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n mieux</numerusform>
            <numerusform>%n mieux</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mended</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n réparé</numerusform>
            <numerusform>%n réparés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gone, without a mend</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n disparu, sans réparation</numerusform>
            <numerusform>%n disparus, sans réparation</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not looked at</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n non examiné</numerusform>
            <numerusform>%n non examinés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n first look</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n premier examen</numerusform>
            <numerusform>%n premiers examens</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n no longer fitted</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n n&apos;est plus monté</numerusform>
            <numerusform>%n ne sont plus montés</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ConflictRow</name>
    <message>
        <source>shown until someone chooses</source>
        <translation>affiché jusqu&apos;à ce que quelqu&apos;un choisisse</translation>
    </message>
    <message>
        <source>Take this one</source>
        <translation>Prendre celui-ci</translation>
    </message>
    <message>
        <source>Take this one: %1, %2</source>
        <comment>value, who wrote it</comment>
        <translation>Prendre celui-ci : %1, %2</translation>
    </message>
</context>
<context>
    <name>ConflictsPage</name>
    <message>
        <source>What differs</source>
        <translation>Ce qui diffère</translation>
    </message>
    <message>
        <source>Nothing was written differently, and nothing is set aside.</source>
        <translation>Rien n&apos;a été écrit autrement, et rien n&apos;est mis de côté.</translation>
    </message>
    <message>
        <source>Two people wrote without knowing of each other. The choice is written as an entry of its own; both versions stay in the record.</source>
        <translation>Deux personnes ont écrit sans le savoir. Le choix est écrit comme une écriture à part ; les deux versions restent au registre.</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Mis de côté</translation>
    </message>
    <message>
        <source>These entries do not count. Take over what you have looked at and want to stand.</source>
        <translation>Ces écritures ne comptent pas. Reprenez ce que vous avez regardé et voulez garder.</translation>
    </message>
    <message>
        <source>These entries do not count. Only an owner can take them over.</source>
        <translation>Ces écritures ne comptent pas. Seul un propriétaire peut les reprendre.</translation>
    </message>
    <message>
        <source>Take over all of them</source>
        <translation>Tout reprendre</translation>
    </message>
</context>
<context>
    <name>CurrentLine</name>
    <message>
        <source>all of them</source>
        <comment>points of one line</comment>
        <translation>tous</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: state</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Pass: %1</source>
        <comment>what it takes</comment>
        <translation>Passe : %1</translation>
    </message>
</context>
<context>
    <name>DemoBand</name>
    <message>
        <source>An invented rig to look round: nothing of it is real, and none of it gets into your own logbook.</source>
        <translation>Un véhicule inventé à visiter : rien n&apos;y est réel, et rien n&apos;en va dans votre propre carnet.</translation>
    </message>
    <message>
        <source>to my own logbook</source>
        <translation>à mon propre carnet</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>ôter le véhicule inventé</translation>
    </message>
</context>
<context>
    <name>DeviceRow</name>
    <message>
        <source>%1: %2</source>
        <comment>device, role</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>revoke</source>
        <comment>a device</comment>
        <translation>révoquer</translation>
    </message>
    <message>
        <source>revoke %1</source>
        <comment>device</comment>
        <translation>révoquer %1</translation>
    </message>
    <message>
        <source>Revoking cannot take back what that device has read: it keeps it. From now on it gets nothing new, and what it writes from now on is set aside for you to look at. What it wrote and has not exchanged yet is set aside too.</source>
        <translation>Révoquer ne reprend pas ce que cet appareil a lu : il le garde. Désormais il ne reçoit plus rien, et ce qu&apos;il écrit est mis de côté pour que vous le regardiez. Ce qu&apos;il a écrit et pas encore échangé aussi.</translation>
    </message>
    <message>
        <source>Why, for the record; may stay empty</source>
        <translation>Pourquoi, pour le registre ; peut rester vide</translation>
    </message>
    <message>
        <source>Revoke %1</source>
        <comment>device</comment>
        <translation>Révoquer %1</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>laisser tel quel</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>Draw on the photo</source>
        <translation>Dessiner sur la photo</translation>
    </message>
    <message>
        <source>lines are kept beside the photo, which stays as it is</source>
        <translation>les traits sont gardés à côté de la photo, qui reste telle quelle</translation>
    </message>
    <message>
        <source>No finding with a photo is open.</source>
        <translation>Aucun constat avec photo n&apos;est ouvert.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Retour au constat</translation>
    </message>
    <message>
        <source>This is its small picture: the photo itself is on another device.</source>
        <translation>C&apos;est sa petite image : la photo elle-même est sur un autre appareil.</translation>
    </message>
    <message>
        <source>ask for the photo in full</source>
        <translation>demander la photo entière</translation>
    </message>
</context>
<context>
    <name>DrawTools</name>
    <message>
        <source>Now touch the rim.</source>
        <translation>Touchez maintenant le bord.</translation>
    </message>
    <message>
        <source>Touch the middle, then the rim; or drag.</source>
        <translation>Touchez le milieu, puis le bord ; ou glissez.</translation>
    </message>
    <message>
        <source>Now touch what it points at.</source>
        <translation>Touchez maintenant ce qu&apos;elle montre.</translation>
    </message>
    <message>
        <source>Touch the tail, then what it points at; or drag.</source>
        <translation>Touchez la queue, puis ce qu&apos;elle montre ; ou glissez.</translation>
    </message>
    <message>
        <source>Now touch the other end.</source>
        <translation>Touchez maintenant l&apos;autre bout.</translation>
    </message>
    <message>
        <source>Touch one end, then the other; or drag.</source>
        <translation>Touchez un bout, puis l&apos;autre ; ou glissez.</translation>
    </message>
    <message>
        <source>circle</source>
        <comment>tool</comment>
        <translation>cercle</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>tool</comment>
        <translation>flèche</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>tool</comment>
        <translation>règle</translation>
    </message>
    <message>
        <source>Length, if known; left empty it is told from the first ruler</source>
        <translation>Longueur, si connue ; vide, elle se déduit de la première règle</translation>
    </message>
    <message>
        <source>Known length, such as that of a tape or a rivet head</source>
        <translation>Longueur connue, par exemple d&apos;un ruban ou d&apos;une tête de rivet</translation>
    </message>
    <message>
        <source>such as 120 mm or 4 3/4 in</source>
        <translation>par exemple 120 mm ou 4 3/4 in</translation>
    </message>
    <message>
        <source>erase last</source>
        <comment>line on a photo</comment>
        <translation>effacer le dernier</translation>
    </message>
    <message>
        <source>erase all</source>
        <comment>lines on a photo</comment>
        <translation>tout effacer</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>annuler</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>about %1</source>
        <comment>a length told by ratio</comment>
        <translation>environ %1</translation>
    </message>
</context>
<context>
    <name>DrawnLines</name>
    <message>
        <source>circle</source>
        <comment>drawn on a photo</comment>
        <translation>cercle</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>drawn on a photo</comment>
        <translation>flèche</translation>
    </message>
    <message>
        <source>ruler, %1</source>
        <comment>drawn on a photo, length</comment>
        <translation>règle, %1</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>drawn on a photo</comment>
        <translation>règle</translation>
    </message>
</context>
<context>
    <name>DueFilters</name>
    <message>
        <source>all of them</source>
        <comment>due points</comment>
        <translation>tous</translation>
    </message>
    <message>
        <source>past due</source>
        <translation>échéance dépassée</translation>
    </message>
    <message>
        <source>within a month</source>
        <translation>dans le mois</translation>
    </message>
    <message>
        <source>within a season</source>
        <translation>dans la saison</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>par date</translation>
    </message>
    <message>
        <source>by concern</source>
        <translation>par gravité</translation>
    </message>
    <message>
        <source>every zone</source>
        <translation>toutes les zones</translation>
    </message>
    <message>
        <source>showing %1, %2, %3</source>
        <comment>which points, zone, order</comment>
        <translation>affiche %1, %2, %3</translation>
    </message>
    <message>
        <source>%1; folds the choices away</source>
        <translation>%1 ; replie les choix</translation>
    </message>
    <message>
        <source>%1; unfolds the choices</source>
        <translation>%1 ; déplie les choix</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Lesquels</translation>
    </message>
    <message>
        <source>In which order</source>
        <translation>Dans quel ordre</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Due</source>
        <comment>heading: what is due when</comment>
        <translation>Échéances</translation>
    </message>
    <message>
        <source>Nothing is worked out yet: the bands come with the first walk.</source>
        <translation>Rien n&apos;est encore calculé : les bandes viennent avec le premier tour.</translation>
    </message>
    <message>
        <source>what to buy for it</source>
        <translation>qu&apos;acheter pour cela</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>et s&apos;il va ailleurs</translation>
    </message>
    <message>
        <source>Line: early to late. Ring: likely. Heavy stroke: time to look. Faint upright: by the catalogue alone. Long upright: today.</source>
        <translation>Trait : de tôt à tard. Anneau : probable. Trait épais : temps d&apos;examiner. Montant pâle : par le catalogue seul. Montant long : aujourd&apos;hui.</translation>
    </message>
    <message>
        <source>Nothing here for that choice.</source>
        <translation>Rien ici pour ce choix.</translation>
    </message>
    <message>
        <source>Nobody has looked at this rig yet, so everything is due at once. Begin with a first look of a quarter of an hour; dates follow from what is marked.</source>
        <translation>Personne n&apos;a encore examiné ce véhicule, donc tout est à échéance à la fois. Commencez par un premier examen d&apos;un quart d&apos;heure ; les dates suivent de ce qui est marqué.</translation>
    </message>
    <message>
        <source>Begin with a first look</source>
        <translation>Commencer par un premier examen</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>au fil du temps</translation>
    </message>
</context>
<context>
    <name>DueRow</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>tôt %1, probable %2, tard %3</translation>
    </message>
</context>
<context>
    <name>EmergencyCard</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>retour</translation>
    </message>
</context>
<context>
    <name>ErrorLine</name>
    <message>
        <source>read</source>
        <comment>puts a message away</comment>
        <translation>lu</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>Not understood: %1</source>
        <translation>Pas compris : %1</translation>
    </message>
    <message>
        <source>Check what was typed, and try once more.</source>
        <translation>Vérifiez ce qui a été saisi, et réessayez.</translation>
    </message>
    <message>
        <source>Beyond what can be true: %1</source>
        <translation>Au-delà de ce qui peut être vrai : %1</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Vérifiez le nombre et son unité.</translation>
    </message>
    <message>
        <source>This version cannot do that: %1</source>
        <translation>Cette version ne sait pas le faire : %1</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Installez la dernière version, ou prenez un autre fichier.</translation>
    </message>
    <message>
        <source>Not found: %1</source>
        <translation>Introuvable : %1</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>Il a peut-être été déplacé. Choisissez-le à nouveau.</translation>
    </message>
    <message>
        <source>Something else has it: %1</source>
        <translation>Autre chose l&apos;occupe : %1</translation>
    </message>
    <message>
        <source>Close other programs that use this logbook, then try once more.</source>
        <translation>Fermez les autres programmes qui utilisent ce carnet, puis réessayez.</translation>
    </message>
    <message>
        <source>The disk refused: %1</source>
        <translation>Le disque a refusé : %1</translation>
    </message>
    <message>
        <source>Nothing was lost before this. See that the disk is there, has room and may be written to.</source>
        <translation>Rien n&apos;a été perdu avant. Voyez si le disque est là, a de la place et se laisse écrire.</translation>
    </message>
    <message>
        <source>Damaged: %1</source>
        <translation>Abîmé : %1</translation>
    </message>
    <message>
        <source>Stop writing to it and open a backup.</source>
        <translation>N&apos;y écrivez plus et ouvrez une sauvegarde.</translation>
    </message>
    <message>
        <source>No connection: %1</source>
        <translation>Pas de connexion : %1</translation>
    </message>
    <message>
        <source>Try once more where there is a network.</source>
        <translation>Réessayez là où il y a du réseau.</translation>
    </message>
    <message>
        <source>How much it is was not understood.</source>
        <translation>La quantité n&apos;a pas été comprise.</translation>
    </message>
    <message>
        <source>Write for example 14 mm, 1/2 in or 3.</source>
        <translation>Écrivez par exemple 14 mm, 1/2 in ou 3.</translation>
    </message>
    <message>
        <source>A reading was not understood: %1</source>
        <translation>Une mesure n&apos;a pas été comprise : %1</translation>
    </message>
    <message>
        <source>Write the number with its unit, for example 380 kPa or 55 psi.</source>
        <translation>Écrivez le nombre avec son unité, par exemple 380 kPa ou 55 psi.</translation>
    </message>
    <message>
        <source>It is not said what is wrong.</source>
        <translation>On n&apos;a pas dit ce qui ne va pas.</translation>
    </message>
    <message>
        <source>Choose what it looks like.</source>
        <translation>Choisissez à quoi cela ressemble.</translation>
    </message>
    <message>
        <source>It is not said how bad it is.</source>
        <translation>On n&apos;a pas dit à quel point.</translation>
    </message>
    <message>
        <source>Choose one of the five grades.</source>
        <translation>Choisissez un des cinq degrés.</translation>
    </message>
    <message>
        <source>It is not said why it could not be looked at.</source>
        <translation>On n&apos;a pas dit pourquoi il n&apos;a pu être examiné.</translation>
    </message>
    <message>
        <source>Choose a reason.</source>
        <translation>Choisissez une raison.</translation>
    </message>
    <message>
        <source>The spot is not on this rig.</source>
        <translation>Cet endroit n&apos;est pas sur ce véhicule.</translation>
    </message>
    <message>
        <source>Point at the drawing once more.</source>
        <translation>Pointez à nouveau sur le dessin.</translation>
    </message>
</context>
<context>
    <name>EverList</name>
    <message>
        <source>Nothing was ever found at a place.</source>
        <translation>Rien n&apos;a jamais été constaté à un endroit.</translation>
    </message>
    <message>
        <source>Found ever, by place: the number in the shape says how often. Its edge is dashed where nothing is open. A hand&apos;s breadth counts as one place.</source>
        <translation>Tout ce qui a été constaté, par endroit : le nombre dans la forme dit combien de fois. Son bord est interrompu là où rien n&apos;est ouvert. Une largeur de main compte pour un seul endroit.</translation>
    </message>
</context>
<context>
    <name>EverPlaces</name>
    <message>
        <source>once, on %1</source>
        <comment>date</comment>
        <translation>une fois, le %1</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s), first on %1, last on %2</source>
        <comment>dates</comment>
        <translation>
            <numerusform>%n fois, d&apos;abord le %1, en dernier le %2</numerusform>
            <numerusform>%n fois, d&apos;abord le %1, en dernier le %2</numerusform>
        </translation>
    </message>
    <message>
        <source>last mend on %1</source>
        <comment>date</comment>
        <translation>dernière réparation le %1</translation>
    </message>
    <message>
        <source>no mend written</source>
        <translation>aucune réparation écrite</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>when found; when mended</comment>
        <translation>%1 ; %2</translation>
    </message>
    <message>
        <source>; nothing open</source>
        <comment>at a place</comment>
        <translation> ; rien d&apos;ouvert</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s) written without a place</source>
        <translation>
            <numerusform>%n constat écrit sans endroit</numerusform>
            <numerusform>%n constats écrits sans endroit</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EverRow</name>
    <message>
        <source>place %1: %2, %3, %4</source>
        <comment>number, where, what, how often and when</comment>
        <translation>endroit %1 : %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>ExchangeBlock</name>
    <message>
        <source>Exchanging with %1</source>
        <comment>store</comment>
        <translation>Échange avec %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>what came and went until now stays</source>
        <translation>ce qui est venu et parti jusqu&apos;ici reste</translation>
    </message>
    <message>
        <source>Stopped. What came and went until then stays; exchange again to go on.</source>
        <translation>Arrêté. Ce qui est venu et parti jusque-là reste ; échangez à nouveau pour continuer.</translation>
    </message>
</context>
<context>
    <name>FileWord</name>
    <message>
        <source>photo from a file</source>
        <translation>photo d&apos;un fichier</translation>
    </message>
    <message>
        <source>Photos of the finding</source>
        <translation>Photos du constat</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Photos (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>FindingList</name>
    <message>
        <source>Nothing found is open. What was not looked at is not known.</source>
        <translation>Rien de ce qui a été trouvé n&apos;est ouvert. Ce qui n&apos;a pas été examiné n&apos;est pas connu.</translation>
    </message>
    <message numerus="yes">
        <source>%n open finding(s)</source>
        <comment>heading over the list</comment>
        <translation>
            <numerusform>%n constat ouvert</numerusform>
            <numerusform>%n constats ouverts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>finding %1: %2, %3, %4</source>
        <comment>number, what, how bad, call</comment>
        <translation>constat %1 : %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>FindingSheet</name>
    <message>
        <source>or</source>
        <translation>ou</translation>
    </message>
    <message>
        <source>something new here</source>
        <translation>une chose nouvelle ici</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <comment>who, where on earth</comment>
        <translation>%1, à %2</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>first tell whether it is one of these</source>
        <translation>dites d&apos;abord si c&apos;est l&apos;un d&apos;eux</translation>
    </message>
    <message>
        <source>first tell how bad it is now</source>
        <translation>dites d&apos;abord à quel point c&apos;est maintenant</translation>
    </message>
    <message>
        <source>Write down: pass</source>
        <translation>Écrire : passe</translation>
    </message>
</context>
<context>
    <name>FinishPage</name>
    <message>
        <source>End of the walk</source>
        <translation>Fin du tour</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Finir ici</translation>
    </message>
    <message>
        <source>lines with an attention</source>
        <translation>lignes avec une attention</translation>
    </message>
    <message>
        <source>lines passed</source>
        <translation>lignes qui passent</translation>
    </message>
    <message>
        <source>lines not fitted</source>
        <translation>lignes non montées</translation>
    </message>
    <message>
        <source>lines without a look</source>
        <translation>lignes sans examen</translation>
    </message>
    <message>
        <source>Every line got a mark. This says what was looked at, not that nothing will fail.</source>
        <translation>Chaque ligne a une marque. Ceci dit ce qui a été examiné, non que rien ne cédera.</translation>
    </message>
    <message>
        <source>Not looked at; press one to go there:</source>
        <translation>Non examinés ; pressez-en un pour y aller :</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Le laisser ouvert</translation>
    </message>
    <message>
        <source>it goes on at the same line</source>
        <translation>il continue à la même ligne</translation>
    </message>
    <message>
        <source>Finish the walk</source>
        <translation>Terminer le tour</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) stay without a look</source>
        <translation>
            <numerusform>%n ligne reste sans examen</numerusform>
            <numerusform>%n lignes restent sans examen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FirstLook</name>
    <message>
        <source>First look</source>
        <comment>kind of walk</comment>
        <translation>Premier examen</translation>
    </message>
    <message>
        <source>What would do most harm if it were wrong, out of all this rig has. The rest can follow in stretches.</source>
        <translation>Ce qui ferait le plus de mal en cas de défaut, parmi tout ce qu&apos;a ce véhicule. Le reste peut suivre par étapes.</translation>
    </message>
</context>
<context>
    <name>FittedBlock</name>
    <message>
        <source>A wheel was fitted</source>
        <translation>Une roue a été montée</translation>
    </message>
    <message>
        <source>Which wheel</source>
        <translation>Quelle roue</translation>
    </message>
    <message>
        <source>Write down the fitting</source>
        <translation>Écrire le montage</translation>
    </message>
    <message>
        <source>its nuts come due after 10, 25 and 50 to 100 miles, until looked at</source>
        <translation>ses écrous viennent à échéance après 10, 25 puis 50 à 100 miles, jusqu&apos;à leur examen</translation>
    </message>
    <message>
        <source>its nuts come due after 16, 40 and 80 to 160 km, until looked at</source>
        <translation>ses écrous viennent à échéance après 16, 40 puis 80 à 160 km, jusqu&apos;à leur examen</translation>
    </message>
</context>
<context>
    <name>Glyph</name>
    <message>
        <source>not yet looked at</source>
        <comment>state of a point</comment>
        <translation>pas encore examiné</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>state of a point</comment>
        <translation>passe</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>à surveiller</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>à réparer bientôt</translation>
    </message>
    <message>
        <source>hold</source>
        <comment>call</comment>
        <translation>arrêt</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>state of a point</comment>
        <translation>non vu</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>state of a point</comment>
        <translation>non monté</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>state of a point</comment>
        <translation>attention</translation>
    </message>
</context>
<context>
    <name>GradeChoice</name>
    <message>
        <source>How bad</source>
        <translation>À quel point</translation>
    </message>
    <message>
        <source>grade %1: %2</source>
        <comment>how bad, in words</comment>
        <translation>degré %1 : %2</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>No finding is open.</source>
        <translation>Aucun constat n&apos;est ouvert.</translation>
    </message>
    <message>
        <source>mended %1</source>
        <comment>date</comment>
        <translation>réparé le %1</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>One begins with attention on a line of a walk, and stays here until a mend closes it.</source>
        <translation>Un constat commence par une attention sur une ligne d&apos;un tour, et reste ici jusqu&apos;à ce qu&apos;une réparation le ferme.</translation>
    </message>
    <message>
        <source>first seen %1: on the map</source>
        <comment>where</comment>
        <translation>vu d&apos;abord %1 : sur la carte</translation>
    </message>
</context>
<context>
    <name>HoldRow</name>
    <message>
        <source>the finding</source>
        <translation>le constat</translation>
    </message>
    <message>
        <source>move it once on one&apos;s own decision …</source>
        <translation>le déplacer une fois, de sa propre décision …</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>a track, GPX or NMEA</source>
        <translation>une trace, GPX ou NMEA</translation>
    </message>
    <message>
        <source>a log of shaking, CSV</source>
        <translation>un relevé de secousses, CSV</translation>
    </message>
    <message>
        <source>weather, CSV or EPW</source>
        <translation>la météo, CSV ou EPW</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Reprendre un fichier</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c&apos;est</translation>
    </message>
    <message>
        <source>The road, if you know it</source>
        <translation>La route, si vous la connaissez</translation>
    </message>
    <message>
        <source>There is no trip yet: take its track in first.</source>
        <translation>Il n&apos;y a pas encore de trajet : prenez d&apos;abord sa trace.</translation>
    </message>
    <message>
        <source>Of which trip</source>
        <translation>De quel trajet</translation>
    </message>
    <message>
        <source>Where the sensor was</source>
        <translation>Où était le capteur</translation>
    </message>
    <message>
        <source>fixed to the rig</source>
        <translation>fixé au véhicule</translation>
    </message>
    <message>
        <source>in the tow vehicle</source>
        <translation>dans le véhicule tracteur</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>where a sensor was</comment>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>A log without speeds needs the drive&apos;s track, or the trip&apos;s mean speed is taken.</source>
        <translation>Un relevé sans vitesses a besoin de la trace du trajet ; sinon on prend sa vitesse moyenne.</translation>
    </message>
    <message>
        <source>Speeds from %1.</source>
        <comment>file name</comment>
        <translation>Vitesses de %1.</translation>
    </message>
    <message>
        <source>track that tells the speed</source>
        <translation>trace qui dit la vitesse</translation>
    </message>
    <message>
        <source>Tracks (*.gpx *.nmea *.log *.txt)</source>
        <translation>Traces (*.gpx *.nmea *.log *.txt)</translation>
    </message>
    <message>
        <source>Where it was measured, unless the file says so</source>
        <translation>Où cela a été mesuré, si le fichier ne le dit pas</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>ailleurs</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Latitude, longitude en degrés</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>par exemple -44.27, 170.10 ou 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Year, for a file of a typical year</source>
        <translation>Année, pour un fichier d&apos;année type</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Choisir le fichier</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.epw)</source>
        <translation>Tables (*.csv *.txt *.epw)</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <comment>file name</comment>
        <translation>Lecture de %1</translation>
    </message>
    <message>
        <source>%1 read; working it out</source>
        <comment>bytes</comment>
        <translation>%1 lus ; calcul en cours</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>nothing of it is written</source>
        <translation>rien n&apos;en est écrit</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the file was written.</source>
        <translation>Arrêté. Rien du fichier n&apos;a été écrit.</translation>
    </message>
    <message>
        <source>The reader says: %1</source>
        <comment>in English</comment>
        <translation>Le lecteur dit : %1</translation>
    </message>
    <message>
        <source>The file stays where it is; it is read on this device, and nothing is sent anywhere.</source>
        <translation>Le fichier reste où il est ; il est lu sur cet appareil, et rien n&apos;est envoyé.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Say what is asked for above, and take it in once more.</source>
        <translation>Dites ce qui est demandé plus haut, puis reprenez-le.</translation>
    </message>
    <message>
        <source>Put it right in the file, or export it once more from where it came from.</source>
        <translation>Corrigez-le dans le fichier, ou exportez-le à nouveau d&apos;où il vient.</translation>
    </message>
    <message>
        <source>Check the number and its unit, or export the file in smaller parts.</source>
        <translation>Vérifiez le nombre et son unité, ou exportez le fichier en parties plus petites.</translation>
    </message>
    <message>
        <source>It is in the logbook already: nothing has to be done.</source>
        <translation>Il est déjà dans le carnet : rien à faire.</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>Il a peut-être été déplacé. Choisissez-le à nouveau.</translation>
    </message>
    <message>
        <source>See that the disk is there, has room and may be read.</source>
        <translation>Voyez si le disque est là, a de la place et se laisse lire.</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Installez la dernière version, ou prenez un autre fichier.</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>ligne %1, colonne %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of weather were added.</source>
        <translation>
            <numerusform>%n jour de météo ajouté.</numerusform>
            <numerusform>%n jours de météo ajoutés.</numerusform>
        </translation>
    </message>
    <message>
        <source>From %1 to %2, at %3.</source>
        <comment>dates, place</comment>
        <translation>Du %1 au %2, à %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) were left out.</source>
        <translation>
            <numerusform>%n mesure écartée.</numerusform>
            <numerusform>%n mesures écartées.</numerusform>
        </translation>
    </message>
    <message>
        <source>The road of the trip was measured over %1: middle %2 m/km, roughest tenth from %3 m/km on.</source>
        <comment>distance, roughness</comment>
        <translation>La route du trajet a été mesurée sur %1 : milieu %2 m/km, dixième le plus rude dès %3 m/km.</translation>
    </message>
    <message>
        <source>Nothing told the speed: the mean of the trip was taken.</source>
        <translation>Rien ne disait la vitesse : la moyenne du trajet a été prise.</translation>
    </message>
    <message>
        <source>The sensor was not on the rig: what it felt is not what the rig felt.</source>
        <translation>Le capteur n&apos;était pas sur le véhicule : ce qu&apos;il a senti n&apos;est pas ce qu&apos;a senti le véhicule.</translation>
    </message>
    <message>
        <source>%1 on %2 was added.</source>
        <comment>distance, date</comment>
        <translation>%1 le %2 ajouté.</translation>
    </message>
    <message numerus="yes">
        <source>%n position(s) were left out.</source>
        <translation>
            <numerusform>%n position écartée.</numerusform>
            <numerusform>%n positions écartées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) in it.</source>
        <translation>
            <numerusform>%n trou dedans.</numerusform>
            <numerusform>%n trous dedans.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is there already.</source>
        <translation>%1 y est déjà.</translation>
    </message>
    <message>
        <source>Something is missing for %1.</source>
        <translation>Il manque quelque chose pour %1.</translation>
    </message>
    <message>
        <source>%1 could not be taken in. Nothing was written.</source>
        <translation>%1 n&apos;a pas pu être repris. Rien n&apos;a été écrit.</translation>
    </message>
    <message>
        <source>%1 of %2 MB</source>
        <translation>%1 de %2 Mo</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 Mo</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Take part in a rig</source>
        <translation>Prendre part à un véhicule</translation>
    </message>
    <message>
        <source>Words of the owner&apos;s device</source>
        <translation>Mots de l&apos;appareil du propriétaire</translation>
    </message>
    <message>
        <source>What this device asks to be; the owner decides</source>
        <translation>Ce que cet appareil demande à être ; le propriétaire décide</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Répondre</translation>
    </message>
    <message>
        <source>Once the owner has enrolled this device and exchanged, exchange with the same store: the rig comes from there.</source>
        <translation>Une fois que le propriétaire a inscrit cet appareil et a échangé, échangez avec le même dépôt : le véhicule vient de là.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>Aux dépôts</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>recommencer</translation>
    </message>
    <message>
        <source>The owner&apos;s device shows a code under share. Read its picture by camera, or type or paste its words.</source>
        <translation>L&apos;appareil du propriétaire montre un code sous partager. Lisez son image par la caméra, ou tapez ou collez ses mots.</translation>
    </message>
    <message>
        <source>every device is lost, the words on paper are left</source>
        <translation>tout appareil est perdu, il reste les mots sur papier</translation>
    </message>
    <message>
        <source>The owner reads the picture below, or types its words, and sees six digits too. They must be these.</source>
        <translation>Le propriétaire lit l&apos;image ci-dessous, ou tape ses mots, et voit aussi six chiffres. Ils doivent être ceux-ci.</translation>
    </message>
</context>
<context>
    <name>KeepBlock</name>
    <message>
        <source>Where it was read</source>
        <translation>Où cela a été lu</translation>
    </message>
    <message>
        <source>Keep as reading</source>
        <translation>Garder comme mesure</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>erase</source>
        <comment>key of the keypad</comment>
        <translation>effacer</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>key of the keypad</comment>
        <translation>vider</translation>
    </message>
    <message>
        <source>next</source>
        <comment>key of the keypad</comment>
        <translation>suivant</translation>
    </message>
    <message>
        <source>done</source>
        <comment>key of the keypad</comment>
        <translation>fini</translation>
    </message>
    <message>
        <source>take away the last figure</source>
        <translation>ôter le dernier chiffre</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>virgule décimale</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>point décimal</translation>
    </message>
    <message>
        <source>above or below zero</source>
        <translation>au-dessus ou au-dessous de zéro</translation>
    </message>
    <message>
        <source>fraction bar</source>
        <translation>barre de fraction</translation>
    </message>
    <message>
        <source>take away all figures</source>
        <translation>ôter tous les chiffres</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>mesure suivante</translation>
    </message>
    <message>
        <source>done with the readings</source>
        <translation>mesures finies</translation>
    </message>
    <message>
        <source>keypad for %1</source>
        <comment>what is read</comment>
        <translation>clavier pour %1</translation>
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
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>LastTime</name>
    <message>
        <source>last time</source>
        <translation>la dernière fois</translation>
    </message>
    <message>
        <source>at a glance</source>
        <comment>how it was looked at</comment>
        <translation>d&apos;un coup d&apos;œil</translation>
    </message>
    <message>
        <source>measured</source>
        <comment>how it was looked at</comment>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>looked</source>
        <comment>how it was looked at</comment>
        <translation>examiné</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>what a point got</comment>
        <translation>passe</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>what a point got</comment>
        <translation>attention</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>what a point got</comment>
        <translation>non monté</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>what a point got</comment>
        <translation>non vu</translation>
    </message>
    <message>
        <source>last: %1</source>
        <comment>a mark: how, what, when, who</comment>
        <translation>dernière fois : %1</translation>
    </message>
</context>
<context>
    <name>LegEntry</name>
    <message>
        <source>From, year-month-day</source>
        <translation>Du, année-mois-jour</translation>
    </message>
    <message>
        <source>Until, the last day</source>
        <translation>Au, le dernier jour</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Où il est garé</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>ailleurs</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Latitude, longitude en degrés</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>par exemple -44.27, 170.10 ou 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Under what</source>
        <translation>Sous quoi</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>à ciel ouvert</translation>
    </message>
    <message>
        <source>under a roof or cover</source>
        <translation>sous un toit ou une bâche</translation>
    </message>
    <message>
        <source>Driven in that time; empty for none</source>
        <translation>Roulé en ce temps ; vide pour rien</translation>
    </message>
    <message>
        <source>such as 750 mi</source>
        <translation>par exemple 750 mi</translation>
    </message>
    <message>
        <source>such as 1200 km</source>
        <translation>par exemple 1200 km</translation>
    </message>
    <message>
        <source>On which road</source>
        <translation>Sur quelle route</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Calculer</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>rien n&apos;est écrit</translation>
    </message>
</context>
<context>
    <name>LegForm</name>
    <message>
        <source>Not a date: %1</source>
        <translation>Pas une date : %1</translation>
    </message>
    <message>
        <source>Write year, month and day, such as 2027-01-15.</source>
        <translation>Écrivez année, mois et jour, par exemple 2027-01-15.</translation>
    </message>
    <message>
        <source>Not a place on earth: %1</source>
        <translation>Pas un lieu sur terre : %1</translation>
    </message>
    <message>
        <source>Choose one, or write latitude and longitude in degrees, such as -44.27, 170.10.</source>
        <translation>Choisissez-en un, ou écrivez latitude et longitude en degrés, par exemple -44.27, 170.10.</translation>
    </message>
    <message>
        <source>Not understood: %1</source>
        <translation>Pas compris : %1</translation>
    </message>
    <message>
        <source>Write it as 1200 km or 750 mi.</source>
        <translation>Écrivez-le comme 1200 km ou 750 mi.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Cela finit avant de commencer.</translation>
    </message>
    <message>
        <source>Give the last day there, at or after the first.</source>
        <translation>Donnez le dernier jour, le premier ou après.</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>road</comment>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>smooth</source>
        <comment>road</comment>
        <translation>lisse</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>road</comment>
        <translation>dégradée</translation>
    </message>
    <message>
        <source>gravel</source>
        <comment>road</comment>
        <translation>gravier</translation>
    </message>
    <message>
        <source>washboard</source>
        <comment>road</comment>
        <translation>tôle ondulée</translation>
    </message>
    <message>
        <source>track</source>
        <comment>road</comment>
        <translation>piste</translation>
    </message>
</context>
<context>
    <name>LinesPage</name>
    <message>
        <source>all</source>
        <comment>lines of a walk</comment>
        <translation>toutes</translation>
    </message>
    <message>
        <source>left, %1</source>
        <comment>lines without a mark, how many</comment>
        <translation>restent, %1</translation>
    </message>
    <message>
        <source>attention, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>attention, %1</translation>
    </message>
    <message>
        <source>pass, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>passe, %1</translation>
    </message>
    <message>
        <source>could not look, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>non vu, %1</translation>
    </message>
    <message>
        <source>not fitted, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>non monté, %1</translation>
    </message>
    <message>
        <source>every stand</source>
        <translation>tous les postes</translation>
    </message>
    <message>
        <source>Search the lines</source>
        <translation>Chercher dans les lignes</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Poste</translation>
    </message>
    <message>
        <source>only one stand</source>
        <translation>un seul poste</translation>
    </message>
    <message>
        <source>No line of this walk is like that.</source>
        <translation>Aucune ligne de ce tour n&apos;est ainsi.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n ligne</numerusform>
            <numerusform>%n lignes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LogbookHead</name>
    <message>
        <source>Logbook</source>
        <translation>Carnet</translation>
    </message>
    <message>
        <source>exchange</source>
        <comment>with other devices</comment>
        <translation>échanger</translation>
    </message>
    <message>
        <source>exchange: %1</source>
        <comment>what waits</comment>
        <translation>échange : %1</translation>
    </message>
    <message>
        <source>search</source>
        <translation>chercher</translation>
    </message>
    <message>
        <source>reports</source>
        <translation>rapports</translation>
    </message>
    <message>
        <source>walks</source>
        <translation>tours</translation>
    </message>
    <message>
        <source>trips</source>
        <translation>trajets</translation>
    </message>
    <message>
        <source>mends</source>
        <translation>réparations</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>photos</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>au fil du temps</translation>
    </message>
    <message>
        <source>map</source>
        <translation>carte</translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>No walk yet.</source>
        <translation>Pas encore de tour.</translation>
    </message>
    <message>
        <source>No trip yet.</source>
        <translation>Pas encore de trajet.</translation>
    </message>
    <message>
        <source>No mend yet.</source>
        <translation>Pas encore de réparation.</translation>
    </message>
    <message>
        <source>No photo yet.</source>
        <translation>Pas encore de photo.</translation>
    </message>
    <message>
        <source>Compare these two</source>
        <translation>Comparer ces deux</translation>
    </message>
    <message>
        <source>Compare the last two</source>
        <translation>Comparer les deux derniers</translation>
    </message>
    <message>
        <source>or press one more</source>
        <translation>ou pressez-en un de plus</translation>
    </message>
    <message>
        <source>or press two of them</source>
        <translation>ou pressez-en deux</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Reprendre un fichier</translation>
    </message>
    <message>
        <source>a track, a log of shaking, weather</source>
        <translation>une trace, un relevé de secousses, la météo</translation>
    </message>
    <message>
        <source>take back: %1</source>
        <comment>what was written last</comment>
        <translation>annuler : %1</translation>
    </message>
</context>
<context>
    <name>LookEntry</name>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, par %2</translation>
    </message>
</context>
<context>
    <name>MapChoices</name>
    <message>
        <source>a finding by its call: hold</source>
        <translation>un constat selon son niveau : arrêt</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>à réparer bientôt</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>à surveiller</translation>
    </message>
    <message>
        <source>a finding that is mended or gone</source>
        <translation>un constat réparé ou disparu</translation>
    </message>
    <message>
        <source>a stay</source>
        <translation>un séjour</translation>
    </message>
    <message>
        <source>the end of a trip</source>
        <translation>la fin d&apos;un trajet</translation>
    </message>
    <message>
        <source>A number says how many lie there. A broken line is a worse road. Press a line for its trip, bare land to bring it to the middle.</source>
        <translation>Un nombre dit combien il y en a là. Une ligne interrompue est une route plus mauvaise. Appuyer sur une ligne pour son trajet, sur le terrain pour l&apos;amener au milieu.</translation>
    </message>
</context>
<context>
    <name>MapMembers</name>
    <message numerus="yes">
        <source>%n thing(s) here</source>
        <comment>on the map</comment>
        <translation>
            <numerusform>%n chose ici</numerusform>
            <numerusform>%n choses ici</numerusform>
        </translation>
    </message>
    <message>
        <source>look closer</source>
        <comment>at the map</comment>
        <translation>voir de plus près</translation>
    </message>
    <message>
        <source>close</source>
        <comment>a list on the map</comment>
        <translation>fermer</translation>
    </message>
</context>
<context>
    <name>MapPage</name>
    <message>
        <source>Map</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>close</source>
        <comment>what is shown</comment>
        <translation>fermer</translation>
    </message>
    <message>
        <source>what is shown</source>
        <comment>on the map</comment>
        <translation>ce qui est montré</translation>
    </message>
    <message>
        <source>Nothing of this rig has a place yet.</source>
        <translation>Rien de ce véhicule n&apos;a encore de lieu.</translation>
    </message>
    <message>
        <source>A track from a phone or a receiver draws its trip here. A stay shows where the rig stood. A finding lies where it was looked at, if the walk was done with the position on (settings).</source>
        <translation>Une trace d&apos;un téléphone ou d&apos;un récepteur dessine ici son trajet. Un séjour montre où le véhicule était. Un constat se trouve là où on l&apos;a examiné, si le tour a été fait avec la position activée (réglages).</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Prendre une trace</translation>
    </message>
    <message>
        <source>Coast: Natural Earth. Names: GeoNames, CC BY 4.0.</source>
        <translation>Côtes : Natural Earth. Noms : GeoNames, CC BY 4.0.</translation>
    </message>
</context>
<context>
    <name>MapPaper</name>
    <message>
        <source>nearer</source>
        <comment>map</comment>
        <translation>plus près</translation>
    </message>
    <message>
        <source>further away</source>
        <comment>map</comment>
        <translation>plus loin</translation>
    </message>
    <message>
        <source>all</source>
        <comment>everything on the map</comment>
        <translation>tout</translation>
    </message>
    <message>
        <source>show everything</source>
        <comment>on the map</comment>
        <translation>tout montrer</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>A trip</source>
        <translation>Un trajet</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates of a stay</comment>
        <translation>du %1 au %2</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date of a stay that goes on</comment>
        <translation>depuis le %1</translation>
    </message>
    <message>
        <source>A stay</source>
        <translation>Un séjour</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point of the rig, defect</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>state of a finding, date</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) here, first: %1</source>
        <translation>
            <numerusform>%n chose ici, d&apos;abord : %1</numerusform>
            <numerusform>%n choses ici, d&apos;abord : %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Map, north up; its middle is %1.</source>
        <comment>where</comment>
        <translation>Carte, nord en haut ; son milieu : %1.</translation>
    </message>
    <message>
        <source>%1 across.</source>
        <comment>distance</comment>
        <translation>%1 de large.</translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>On ne sait pas ici où est la mer.</translation>
    </message>
    <message>
        <source>findings</source>
        <comment>on the map</comment>
        <translation>constats</translation>
    </message>
    <message>
        <source>mended ones too</source>
        <comment>findings on the map</comment>
        <translation>réparés aussi</translation>
    </message>
    <message>
        <source>trips</source>
        <comment>on the map</comment>
        <translation>trajets</translation>
    </message>
    <message>
        <source>stays</source>
        <comment>on the map</comment>
        <translation>séjours</translation>
    </message>
</context>
<context>
    <name>MarkBar</name>
    <message>
        <source>Pass</source>
        <comment>mark</comment>
        <translation>Passe</translation>
    </message>
    <message>
        <source>Attention</source>
        <comment>mark</comment>
        <translation>Attention</translation>
    </message>
</context>
<context>
    <name>MendForm</name>
    <message>
        <source>Write down a mend</source>
        <translation>Écrire une réparation</translation>
    </message>
    <message>
        <source>What kind of work</source>
        <translation>Quel genre de travail</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coût</translation>
    </message>
    <message>
        <source>Brakes, gas, mains and tires: by licensed people, and to the maker&apos;s figures.</source>
        <translation>Freins, gaz, secteur et pneus : par des professionnels habilités, aux valeurs du constructeur.</translation>
    </message>
    <message>
        <source>Write down the mend</source>
        <translation>Écrire la réparation</translation>
    </message>
    <message>
        <source>first tell what kind of work</source>
        <translation>dites d&apos;abord quel genre de travail</translation>
    </message>
    <message>
        <source>With what and how many</source>
        <translation>Avec quoi et combien</translation>
    </message>
    <message>
        <source>such as lap sealant, 2 cartridges; 3 x rivet 3/16 in</source>
        <translation>par exemple mastic autonivelant, 2 cartouches; 3 x rivet 3/16 in</translation>
    </message>
</context>
<context>
    <name>MoreWord</name>
    <message>
        <source>further up</source>
        <comment>turn the page without a swipe</comment>
        <translation>plus haut</translation>
    </message>
    <message>
        <source>further down</source>
        <comment>turn the page without a swipe</comment>
        <translation>plus bas</translation>
    </message>
</context>
<context>
    <name>NewFinding</name>
    <message>
        <source>first tell which of these it is</source>
        <translation>dites d&apos;abord lequel c&apos;est</translation>
    </message>
    <message>
        <source>first tell what it is and how bad</source>
        <translation>dites d&apos;abord ce que c&apos;est et à quel point</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>of the points of a line</comment>
        <translation>Lequel</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>par exemple 60 mm, ou 2 sur 8</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>OfferedFinding</name>
    <message>
        <source>mended, it holds</source>
        <translation>réparé, cela tient</translation>
    </message>
    <message>
        <source>there again</source>
        <translation>revenu</translation>
    </message>
    <message>
        <source>still there, the same</source>
        <translation>toujours là, pareil</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>pire</translation>
    </message>
    <message>
        <source>better</source>
        <translation>mieux</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>disparu</translation>
    </message>
    <message>
        <source>Finding %1, mended: now</source>
        <comment>number</comment>
        <translation>Constat %1, réparé : maintenant</translation>
    </message>
    <message>
        <source>Finding %1 now</source>
        <comment>number</comment>
        <translation>Constat %1 maintenant</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>par exemple 60 mm, ou 2 sur 8</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>OpenFinding</name>
    <message>
        <source>Finding %1 since %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Constat %1 depuis le %2 : %3</translation>
    </message>
    <message>
        <source>Finding %1, mended %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Constat %1, réparé le %2 : %3</translation>
    </message>
    <message>
        <source>A pass here confirms the mend.</source>
        <translation>Une passe ici confirme la réparation.</translation>
    </message>
</context>
<context>
    <name>PageFoot</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>retour</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>urgence</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>A key on paper</source>
        <translation>Une clé sur papier</translation>
    </message>
    <message>
        <source>24 words that own %1 when every device is lost. They are shown once and kept nowhere: write them down, on two papers if you can.</source>
        <comment>rig</comment>
        <translation>24 mots qui possèdent %1 quand tout appareil est perdu. Ils sont montrés une fois et gardés nulle part : écrivez-les, sur deux papiers si vous pouvez.</translation>
    </message>
    <message>
        <source>Who has the words and reaches a store owns the logbook. Keep them as you keep the papers of the rig. A paper that was lost or seen is revoked like a device.</source>
        <translation>Qui a les mots et atteint un dépôt possède le carnet. Gardez-les comme les papiers du véhicule. Un papier perdu ou vu se révoque comme un appareil.</translation>
    </message>
    <message>
        <source>Show the words</source>
        <translation>Montrer les mots</translation>
    </message>
    <message>
        <source>only you look at the screen now</source>
        <translation>vous seul regardez l&apos;écran maintenant</translation>
    </message>
    <message>
        <source>The key of %1</source>
        <comment>rig</comment>
        <translation>La clé de %1</translation>
    </message>
    <message>
        <source>The mark of the rig; not secret, it tells this rig from one that somebody made up</source>
        <translation>La marque du véhicule ; pas secrète, elle distingue ce véhicule d&apos;un autre inventé</translation>
    </message>
    <message>
        <source>Exchange with a store now, so that the store knows this key.</source>
        <translation>Échangez maintenant avec un dépôt, pour qu&apos;il connaisse cette clé.</translation>
    </message>
    <message>
        <source>It is written down</source>
        <translation>C&apos;est écrit</translation>
    </message>
    <message>
        <source>the words are not shown again</source>
        <translation>les mots ne sont plus montrés</translation>
    </message>
</context>
<context>
    <name>PhotoBoard</name>
    <message>
        <source>photo to draw on</source>
        <translation>photo où dessiner</translation>
    </message>
    <message>
        <source>photo to draw on: %1</source>
        <translation>photo où dessiner : %1</translation>
    </message>
</context>
<context>
    <name>PhotoChoice</name>
    <message>
        <source>Photos: none yet</source>
        <translation>Photos : aucune encore</translation>
    </message>
    <message>
        <source>leave out</source>
        <comment>a photo</comment>
        <translation>ôter</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s); press one to draw on it</source>
        <translation>
            <numerusform>%n photo ; pressez-la pour dessiner dessus</numerusform>
            <numerusform>%n photos ; pressez-en une pour dessiner dessus</numerusform>
        </translation>
    </message>
    <message>
        <source>number %1</source>
        <comment>photo</comment>
        <translation>numéro %1</translation>
    </message>
    <message>
        <source>take a photo</source>
        <translation>prendre une photo</translation>
    </message>
</context>
<context>
    <name>PhotoPair</name>
    <message>
        <source>then, %1</source>
        <comment>photo</comment>
        <translation>avant, le %1</translation>
    </message>
    <message>
        <source>then</source>
        <comment>earlier walk</comment>
        <translation>avant</translation>
    </message>
    <message>
        <source>now, %1</source>
        <comment>photo</comment>
        <translation>maintenant, le %1</translation>
    </message>
    <message>
        <source>then, in its place</source>
        <translation>avant, à sa place</translation>
    </message>
    <message>
        <source>now; press for then</source>
        <translation>maintenant ; pressez pour avant</translation>
    </message>
    <message>
        <source>now</source>
        <comment>later walk</comment>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>shows then in the place of now</source>
        <translation>montre avant à la place de maintenant</translation>
    </message>
    <message>
        <source>now; press to see then in its place</source>
        <translation>maintenant ; pressez pour voir avant à sa place</translation>
    </message>
</context>
<context>
    <name>PhotoTile</name>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>photo: %1</source>
        <translation>photo : %1</translation>
    </message>
    <message>
        <source>no photo</source>
        <translation>sans photo</translation>
    </message>
    <message>
        <source>%1; opens it</source>
        <comment>photo</comment>
        <translation>%1 ; l&apos;ouvre</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Rig</source>
        <comment>place: the drawing of the rig</comment>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Due</source>
        <comment>place: what is due when</comment>
        <translation>Échéances</translation>
    </message>
    <message>
        <source>Logbook</source>
        <comment>place: walks, trips, mends</comment>
        <translation>Carnet</translation>
    </message>
    <message>
        <source>Bench</source>
        <comment>place: worked computations</comment>
        <translation>Établi</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>urgence</translation>
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
        <translation>côté trottoir</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>côté route</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>avant</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>arrière</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>vu de dessus</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>dessous</translation>
    </message>
    <message>
        <source>not told yet</source>
        <translation>pas encore dit</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <comment>place on the rig</comment>
        <translation>Où : %1</translation>
    </message>
    <message>
        <source>touch the spot</source>
        <translation>touchez l&apos;endroit</translation>
    </message>
    <message>
        <source>or at a named place</source>
        <translation>ou à un endroit nommé</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>depuis l&apos;avant</translation>
    </message>
    <message>
        <source>from the centre line</source>
        <translation>depuis l&apos;axe</translation>
    </message>
    <message>
        <source>up from the ground</source>
        <translation>depuis le sol</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>length, from where</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <comment>from where</comment>
        <translation>mesuré : %1</translation>
    </message>
</context>
<context>
    <name>PlaceHost</name>
    <message>
        <source>Opening the logbook …</source>
        <translation>Ouverture du carnet …</translation>
    </message>
</context>
<context>
    <name>PlatePicture</name>
    <message>
        <source>picture of a placard: mass, axles, tires, pressure when cold</source>
        <translation>dessin d&apos;une étiquette : masse, essieux, pneus, pression à froid</translation>
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
        <translation>Tous les combien de mois</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Toutes les combien de distance</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>par exemple 10 000 km ou 6000 mi</translation>
    </message>
    <message>
        <source>set this</source>
        <translation>fixer cela</translation>
    </message>
    <message>
        <source>as the catalogue has it</source>
        <translation>comme au catalogue</translation>
    </message>
    <message>
        <source>show it again</source>
        <translation>le montrer à nouveau</translation>
    </message>
    <message>
        <source>hide it</source>
        <translation>le masquer</translation>
    </message>
</context>
<context>
    <name>PointWords</name>
    <message numerus="yes">
        <source>every %n month(s)</source>
        <comment>interval</comment>
        <translation>
            <numerusform>tous les %n mois</numerusform>
            <numerusform>tous les %n mois</numerusform>
        </translation>
    </message>
    <message>
        <source>before each move, or after what happens</source>
        <translation>avant chaque départ, ou après ce qui arrive</translation>
    </message>
    <message>
        <source>every %1</source>
        <comment>distance</comment>
        <translation>tous les %1</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>every so many months, distance</comment>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>hidden by %1, %2</source>
        <comment>who, date</comment>
        <translation>masqué par %1, %2</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>à vous</translation>
    </message>
    <message>
        <source>the catalogue has %1</source>
        <comment>interval</comment>
        <translation>le catalogue a %1</translation>
    </message>
    <message>
        <source>it matters on the road</source>
        <translation>compte sur la route</translation>
    </message>
    <message>
        <source>fire, gas or fumes</source>
        <translation>feu, gaz ou fumées</translation>
    </message>
    <message>
        <source>water gets in</source>
        <translation>l&apos;eau entre</translation>
    </message>
    <message>
        <source>health</source>
        <translation>santé</translation>
    </message>
    <message>
        <source>someone can be hurt at camp</source>
        <translation>quelqu&apos;un peut être blessé au camp</translation>
    </message>
    <message>
        <source>comfort</source>
        <translation>confort</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>aspect seulement</translation>
    </message>
    <message>
        <source>every month</source>
        <comment>interval</comment>
        <translation>chaque mois</translation>
    </message>
</context>
<context>
    <name>PointsPage</name>
    <message>
        <source>Points of this rig</source>
        <translation>Points de ce véhicule</translation>
    </message>
    <message>
        <source>Find a point by a word</source>
        <translation>Chercher un point par un mot</translation>
    </message>
    <message>
        <source>add a point of your own</source>
        <translation>ajouter un point à vous</translation>
    </message>
</context>
<context>
    <name>QrPicture</name>
    <message>
        <source>The code as a picture; the words below say the same</source>
        <translation>Le code en image ; les mots dessous disent pareil</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>more figures, if known</source>
        <translation>plus de valeurs, si connues</translation>
    </message>
    <message>
        <source>a worked example</source>
        <translation>un exemple calculé</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>takes away what was typed</comment>
        <translation>recommencer</translation>
    </message>
</context>
<context>
    <name>ReadCode</name>
    <message>
        <source>read the picture by camera</source>
        <translation>lire l&apos;image par la caméra</translation>
    </message>
    <message>
        <source>read it from a picture file</source>
        <translation>la lire d&apos;un fichier image</translation>
    </message>
    <message>
        <source>This device has no camera that can be used. Type the words, or read a picture file.</source>
        <translation>Cet appareil n&apos;a pas de caméra utilisable. Tapez les mots, ou lisez un fichier image.</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>ce que voit la caméra</translation>
    </message>
    <message>
        <source>Hold it straight on, so that the whole picture is seen.</source>
        <translation>Tenez-le bien en face, que toute l&apos;image se voie.</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>La caméra démarre …</translation>
    </message>
    <message>
        <source>leave the camera</source>
        <translation>quitter la caméra</translation>
    </message>
    <message>
        <source>Picture of the code</source>
        <translation>Image du code</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Photos (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>ReadingEntry</name>
    <message>
        <source>last time %1</source>
        <comment>a reading</comment>
        <translation>dernière fois %1</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <comment>quantity, unit</comment>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>over all walks</source>
        <comment>readings</comment>
        <translation>sur tous les tours</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>%1 on %2</source>
        <comment>last reading, date</comment>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>limits</comment>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>valeur du constructeur : non saisie</translation>
    </message>
    <message>
        <source>Not understood. Write it for example as %1.</source>
        <translation>Pas compris. Écrivez-le par exemple comme %1.</translation>
    </message>
    <message>
        <source>%1 is outside the limit (%2, %3). Consider attention.</source>
        <translation>%1 est hors de la limite (%2, %3). Pensez à attention.</translation>
    </message>
</context>
<context>
    <name>Reason</name>
    <message>
        <source>Water gets in if it fails.</source>
        <translation>L&apos;eau entre s&apos;il lâche.</translation>
    </message>
    <message>
        <source>It matters on the road.</source>
        <translation>Cela compte sur la route.</translation>
    </message>
    <message>
        <source>Fire, gas or fumes if it fails.</source>
        <translation>Feu, gaz ou fumées s&apos;il lâche.</translation>
    </message>
    <message>
        <source>It touches health.</source>
        <translation>Cela touche la santé.</translation>
    </message>
    <message>
        <source>Someone can be hurt at camp.</source>
        <translation>Quelqu&apos;un peut être blessé au camp.</translation>
    </message>
    <message>
        <source>It is a matter of looks.</source>
        <translation>C&apos;est une affaire d&apos;aspect.</translation>
    </message>
    <message>
        <source>It is a matter of comfort.</source>
        <translation>C&apos;est une affaire de confort.</translation>
    </message>
    <message>
        <source>You drive about %1 a year, by your own seasons.</source>
        <translation>Vous roulez environ %1 par an, selon vos saisons.</translation>
    </message>
    <message>
        <source>Your trips so far come to about %1 a year.</source>
        <translation>Vos trajets jusqu&apos;ici font environ %1 par an.</translation>
    </message>
    <message>
        <source>You said about %1 a year.</source>
        <translation>Vous avez dit environ %1 par an.</translation>
    </message>
    <message>
        <source>You said that it does not move.</source>
        <translation>Vous avez dit qu&apos;il ne roule pas.</translation>
    </message>
    <message>
        <source>Nothing is known of how much you drive: %1 a year is taken.</source>
        <translation>On ne sait pas combien vous roulez : on prend %1 par an.</translation>
    </message>
    <message>
        <source>Last looked at on %1.</source>
        <translation>Dernier examen le %1.</translation>
    </message>
    <message>
        <source>Could not be looked at on %1.</source>
        <translation>N&apos;a pas pu être examiné le %1.</translation>
    </message>
    <message>
        <source>Since then: %1.</source>
        <translation>Depuis : %1.</translation>
    </message>
    <message numerus="yes">
        <source>Every %n months, counted from %1.</source>
        <translation>
            <numerusform>Tous les %n mois, comptés du %1.</numerusform>
            <numerusform>Tous les %n mois, comptés du %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 driven since.</source>
        <translation>%1 parcourus depuis.</translation>
    </message>
    <message>
        <source>A wheel was fitted on %1; look again from %2 on.</source>
        <translation>Une roue a été montée le %1 ; à examiner à nouveau dès %2.</translation>
    </message>
    <message>
        <source>Because of: %1.</source>
        <translation>À cause de : %1.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Personne ne l&apos;a encore examiné.</translation>
    </message>
    <message>
        <source>A limit of zero was left out.</source>
        <translation>Une limite de zéro a été écartée.</translation>
    </message>
    <message>
        <source>Grade %1 of 5.</source>
        <translation>Degré %1 sur 5.</translation>
    </message>
    <message>
        <source>The next look is taken to be %1 months away.</source>
        <translation>Le prochain examen est pris dans %1 mois.</translation>
    </message>
    <message>
        <source>The chance that it fails before then is taken as %1.</source>
        <translation>La probabilité qu&apos;il lâche d&apos;ici là est prise à %1.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>Le pire degré sur un point de la liste d&apos;arrêt.</translation>
    </message>
    <message>
        <source>It was mended; a look has to confirm it.</source>
        <translation>Il a été réparé ; un examen doit le confirmer.</translation>
    </message>
</context>
<context>
    <name>ReasonChips</name>
    <message>
        <source>Could not look, because</source>
        <translation>Non vu, car</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>non vu : %1</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>une autre raison</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>put the reasons away</comment>
        <translation>pas maintenant</translation>
    </message>
</context>
<context>
    <name>ReasonsPage</name>
    <message>
        <source>Could not look, because</source>
        <translation>Non vu, car</translation>
    </message>
    <message>
        <source>Note, if it helps</source>
        <translation>Note, si cela aide</translation>
    </message>
</context>
<context>
    <name>RecoverPage</name>
    <message>
        <source>Back by the words on paper</source>
        <translation>Revenir par les mots sur papier</translation>
    </message>
    <message>
        <source>Add the store first that has the rig, on the page before this one.</source>
        <translation>Ajoutez d&apos;abord le dépôt qui a le véhicule, à la page d&apos;avant.</translation>
    </message>
    <message>
        <source>The store that has the rig</source>
        <translation>Le dépôt qui a le véhicule</translation>
    </message>
    <message>
        <source>The 24 words</source>
        <translation>Les 24 mots</translation>
    </message>
    <message>
        <source>The mark, seven words beside them; may stay empty</source>
        <translation>La marque, sept mots à côté ; peut rester vide</translation>
    </message>
    <message>
        <source>Own the rig again</source>
        <translation>Redevenir propriétaire</translation>
    </message>
    <message>
        <source>Looking at the store …</source>
        <translation>Regard dans le dépôt …</translation>
    </message>
    <message>
        <source>This device owns the rig again.</source>
        <translation>Cet appareil possède à nouveau le véhicule.</translation>
    </message>
    <message>
        <source>No mark was typed. Compare it with the paper before you trust what comes:</source>
        <translation>Aucune marque saisie. Comparez-la au papier avant de vous fier à ce qui vient :</translation>
    </message>
    <message>
        <source>Mark of the rig</source>
        <translation>Marque du véhicule</translation>
    </message>
    <message>
        <source>Exchange with the store now: the rig comes from there. Then revoke the devices that were lost.</source>
        <translation>Échangez maintenant avec le dépôt : le véhicule vient de là. Puis révoquez les appareils perdus.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>Aux dépôts</translation>
    </message>
</context>
<context>
    <name>ReportScope</name>
    <message>
        <source>The walk: %1</source>
        <translation>Le tour : %1</translation>
    </message>
    <message>
        <source>Against: %1</source>
        <comment>the earlier walk</comment>
        <translation>Comparé à : %1</translation>
    </message>
    <message>
        <source>older ones</source>
        <comment>walks</comment>
        <translation>plus anciens</translation>
    </message>
    <message>
        <source>Findings: all that suit</source>
        <translation>Constats : tous ceux qui conviennent</translation>
    </message>
    <message numerus="yes">
        <source>Findings: %n chosen</source>
        <translation>
            <numerusform>Constats : %n choisi</numerusform>
            <numerusform>Constats : %n choisis</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it stands, how to get there</source>
        <translation>Où il se trouve, comment y aller</translation>
    </message>
    <message>
        <source>Power at the place</source>
        <translation>Courant sur place</translation>
    </message>
    <message>
        <source>Key, and who has it</source>
        <translation>Clé, et qui l&apos;a</translation>
    </message>
</context>
<context>
    <name>ReportSigners</name>
    <message>
        <source>take the signature away: %1</source>
        <comment>who signed</comment>
        <translation>retirer la signature : %1</translation>
    </message>
    <message>
        <source>sign on the screen: %1</source>
        <comment>who signs</comment>
        <translation>signer à l&apos;écran : %1</translation>
    </message>
    <message>
        <source>What was signed stays as it stood. Choosing anything else here takes the signatures away.</source>
        <translation>Ce qui est signé reste tel quel. Choisir autre chose ici retire les signatures.</translation>
    </message>
</context>
<context>
    <name>ReportsPage</name>
    <message>
        <source>Reports</source>
        <translation>Rapports</translation>
    </message>
    <message>
        <source>What should it tell?</source>
        <translation>Que doit-il dire ?</translation>
    </message>
    <message>
        <source>another report</source>
        <translation>un autre rapport</translation>
    </message>
    <message>
        <source>Drawing the pages …</source>
        <translation>Dessin des pages …</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <comment>title of a report</comment>
        <translation>%1, page %2 sur %3</translation>
    </message>
    <message>
        <source>page before</source>
        <translation>page d&apos;avant</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>page suivante</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Enregistrer : %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Écrit : %1</translation>
    </message>
    <message>
        <source>Sheets of paper</source>
        <translation>Feuilles de papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper size</comment>
        <translation>Letter (US)</translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation>Où c&apos;était</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>of a report</comment>
        <translation>omis</translation>
    </message>
    <message>
        <source>to about 5 km</source>
        <comment>how exact a place is told</comment>
        <translation>à environ 5 km</translation>
    </message>
    <message>
        <source>exact</source>
        <comment>how exact a place is told</comment>
        <translation>exact</translation>
    </message>
    <message>
        <source>What the camera wrote into photos: place, time, its number</source>
        <translation>Ce que l&apos;appareil photo a écrit dans les photos : lieu, heure, son numéro</translation>
    </message>
    <message>
        <source>kept, in the web page</source>
        <comment>data in photos</comment>
        <translation>gardé, dans la page web</translation>
    </message>
    <message>
        <source>The file lies where you put it; nothing is sent anywhere.</source>
        <translation>Le fichier est là où vous le mettez ; rien n&apos;est envoyé nulle part.</translation>
    </message>
</context>
<context>
    <name>RigBoard</name>
    <message>
        <source>kerb side</source>
        <comment>face of the rig</comment>
        <translation>côté trottoir</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>côté route</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>avant</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>arrière</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>dessous</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>face of the rig, how many findings</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>placez-vous ici</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>vu de dessus</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>depuis l&apos;échelle, ou une caméra sur perche</translation>
    </message>
</context>
<context>
    <name>RigFoot</name>
    <message>
        <source>fresh water</source>
        <translation>eau propre</translation>
    </message>
    <message>
        <source>grey water</source>
        <translation>eaux grises</translation>
    </message>
    <message>
        <source>black water</source>
        <translation>eaux noires</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>bouteille de gaz</translation>
    </message>
    <message>
        <source>house battery</source>
        <translation>batterie de service</translation>
    </message>
    <message>
        <source>Dashed: where such rigs usually have them, common practice, not measured: %1.</source>
        <translation>En traits interrompus : emplacement habituel, pratique courante, non mesuré : %1.</translation>
    </message>
</context>
<context>
    <name>RigForm</name>
    <message>
        <source>Not understood: %1</source>
        <translation>Pas compris : %1</translation>
    </message>
    <message>
        <source>Write it for example as 6.4 m or 21 ft.</source>
        <translation>Écrivez-le par exemple comme 6,4 m ou 21 ft.</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Choisissez dans la liste.</translation>
    </message>
    <message>
        <source>It has no name, or a very long one.</source>
        <translation>Il n&apos;a pas de nom, ou un très long.</translation>
    </message>
    <message>
        <source>Give the rig a short name.</source>
        <translation>Donnez au véhicule un nom court.</translation>
    </message>
    <message>
        <source>The axles cannot be like that.</source>
        <translation>Les essieux ne peuvent pas être ainsi.</translation>
    </message>
    <message>
        <source>Give each axle&apos;s distance from the front face, foremost first, for example 3.3 m.</source>
        <translation>Donnez la distance de chaque essieu depuis la face avant, le premier d&apos;abord, par exemple 3,3 m.</translation>
    </message>
    <message>
        <source>This cannot be right.</source>
        <translation>Cela ne peut pas être juste.</translation>
    </message>
    <message>
        <source>Check the number and its unit, for example 6.4 m or 21 ft.</source>
        <translation>Vérifiez le nombre et son unité, par exemple 6,4 m ou 21 ft.</translation>
    </message>
    <message>
        <source>Write it for example as 4.5 bar or 65 psi.</source>
        <translation>Écrivez par exemple 4,5 bar ou 65 psi.</translation>
    </message>
    <message>
        <source>Write the number with its unit.</source>
        <translation>Écrivez le nombre avec son unité.</translation>
    </message>
    <message>
        <source>Nothing is chosen.</source>
        <translation>Rien n&apos;est choisi.</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Choisissez ce qui s&apos;en approche le plus.</translation>
    </message>
    <message>
        <source>Choose where the rig is at home.</source>
        <translation>Choisissez d&apos;où est le véhicule.</translation>
    </message>
    <message>
        <source>A door, window or vent would lie outside the rig.</source>
        <translation>Une porte, une fenêtre ou un aérateur serait hors du véhicule.</translation>
    </message>
    <message>
        <source>Check the length, or move it on the command line with rig set.</source>
        <translation>Vérifiez la longueur, ou déplacez-le en ligne de commande avec rig set.</translation>
    </message>
    <message>
        <source>The placard asks for more than the sidewall allows.</source>
        <translation>L&apos;étiquette demande plus que ne permet le flanc.</translation>
    </message>
    <message>
        <source>Read both again; a tire shop decides which tire is wrong.</source>
        <translation>Relisez les deux ; un monteur de pneus décide quel pneu ne va pas.</translation>
    </message>
    <message>
        <source>Check it, for example 4.5 bar or 65 psi.</source>
        <translation>Vérifiez, par exemple 4,5 bar ou 65 psi.</translation>
    </message>
</context>
<context>
    <name>RigHead</name>
    <message>
        <source>settings</source>
        <comment>page</comment>
        <translation>réglages</translation>
    </message>
</context>
<context>
    <name>RigView</name>
    <message>
        <source>drawing of the rig</source>
        <translation>dessin du véhicule</translation>
    </message>
    <message>
        <source>drawing of the rig, %1</source>
        <comment>which face</comment>
        <translation>dessin du véhicule, %1</translation>
    </message>
    <message>
        <source>finding %1: %2, %3</source>
        <comment>number, what, call</comment>
        <translation>constat %1 : %2, %3</translation>
    </message>
    <message>
        <source>place %1: %2, %3</source>
        <comment>number, where, how often and when</comment>
        <translation>endroit %1 : %2, %3</translation>
    </message>
</context>
<context>
    <name>RigWords</name>
    <message>
        <source>twin-axle</source>
        <translation>à deux essieux</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>axles, kind of rig</comment>
        <translation>%2 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n-axle</source>
        <translation>
            <numerusform>à %n essieu</numerusform>
            <numerusform>à %n essieux</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 today</source>
        <comment>time</comment>
        <translation>%1 aujourd&apos;hui</translation>
    </message>
    <message numerus="yes">
        <source>%n on hold: %1.</source>
        <translation>
            <numerusform>%n à l&apos;arrêt : %1.</numerusform>
            <numerusform>%n à l&apos;arrêt : %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1.</source>
        <translation>
            <numerusform>Aucun arrêt sur le %n point examiné depuis le %1.</numerusform>
            <numerusform>Aucun arrêt parmi les %n points examinés depuis le %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1 by %2.</source>
        <translation>
            <numerusform>Aucun arrêt sur le %n point examiné depuis le %1 par %2.</numerusform>
            <numerusform>Aucun arrêt parmi les %n points examinés depuis le %1 par %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be looked at: %1.</source>
        <translation>
            <numerusform>%n n&apos;a pas pu être examiné : %1.</numerusform>
            <numerusform>%n n&apos;ont pas pu être examinés : %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2 logged</source>
        <translation>%1 ; %2 au carnet</translation>
    </message>
    <message>
        <source>Nothing was looked at yet.</source>
        <translation>Rien n&apos;a encore été examiné.</translation>
    </message>
    <message numerus="yes">
        <source>%n to mend soon.</source>
        <translation>
            <numerusform>%n à réparer bientôt.</numerusform>
            <numerusform>%n à réparer bientôt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n a dépassé son échéance.</numerusform>
            <numerusform>%n ont dépassé leur échéance.</numerusform>
        </translation>
    </message>
    <message>
        <source>This says what was looked at, not that nothing will fail.</source>
        <translation>Ceci dit ce qui a été examiné, non que rien ne cédera.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>Le pire degré sur un point de la liste d&apos;arrêt.</translation>
    </message>
    <message>
        <source>It is on the hold list and could not be looked at.</source>
        <translation>Il est sur la liste d&apos;arrêt et n&apos;a pas pu être examiné.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n ligne</numerusform>
            <numerusform>%n lignes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n minutes</source>
        <translation>
            <numerusform>environ %n minute</numerusform>
            <numerusform>environ %n minutes</numerusform>
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
        <translation>%1, masqué par %2, %3</translation>
    </message>
    <message>
        <source>accepted by %1 on %2: %3</source>
        <comment>who, when, because</comment>
        <translation>accepté par %1 le %2 : %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, figure</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Hidden: %1</source>
        <comment>points</comment>
        <translation>Masqués : %1</translation>
    </message>
    <message>
        <source>why</source>
        <comment>opens the grounds of the figures</comment>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>its measures and plates</source>
        <translation>ses dimensions et plaques</translation>
    </message>
    <message numerus="yes">
        <source>%n of them are jobs of a quarter of an hour and more; their time is not counted. Pass over what is not for today.</source>
        <translation>
            <numerusform>%n d&apos;eux est un travail d&apos;un quart d&apos;heure ou plus ; son temps n&apos;est pas compté. Passez ce qui n&apos;est pas pour aujourd&apos;hui.</numerusform>
            <numerusform>%n d&apos;eux sont des travaux d&apos;un quart d&apos;heure ou plus ; leur temps n&apos;est pas compté. Passez ce qui n&apos;est pas pour aujourd&apos;hui.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n hours</source>
        <translation>
            <numerusform>environ %n heure</numerusform>
            <numerusform>environ %n heures</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RigsBlock</name>
    <message>
        <source>Rig under care</source>
        <translation>Véhicule suivi</translation>
    </message>
    <message>
        <source>put %1 away: not offered on this device, its logbook stays</source>
        <comment>rig</comment>
        <translation>mettre %1 à part : plus proposé sur cet appareil, son carnet reste</translation>
    </message>
    <message>
        <source>bring back %1</source>
        <comment>rig that was put away</comment>
        <translation>reprendre %1</translation>
    </message>
    <message>
        <source>set up another rig</source>
        <translation>créer un autre véhicule</translation>
    </message>
</context>
<context>
    <name>RoadLine</name>
    <message>
        <source>Roughness along the way: %1 to %2 m/km, the roughest %3 from where the log began.</source>
        <translation>Rudesse en chemin : de %1 à %2 m/km, la plus rude à %3 du début du relevé.</translation>
    </message>
</context>
<context>
    <name>SearchModel</name>
    <message>
        <source>point</source>
        <translation>point</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>note on a walk</source>
        <translation>note d&apos;un tour</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>réparation</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>tour</translation>
    </message>
    <message>
        <source>trip</source>
        <translation>trajet</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>séjour</translation>
    </message>
    <message>
        <source>event</source>
        <translation>événement</translation>
    </message>
</context>
<context>
    <name>SearchPage</name>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Words, or how they begin</source>
        <translation>Des mots, ou leur début</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Recherche …</translation>
    </message>
    <message>
        <source>Findings, notes, mends, trips and points of this rig. Accents do not matter.</source>
        <translation>Constats, notes, réparations, trajets et points de ce véhicule. Les accents ne comptent pas.</translation>
    </message>
    <message>
        <source>Nothing of this rig has these words.</source>
        <translation>Rien de ce véhicule n&apos;a ces mots.</translation>
    </message>
</context>
<context>
    <name>SeasonRuler</name>
    <message>
        <source>the year, and where the rig will be: %1</source>
        <translation>l&apos;année, et où sera le véhicule : %1</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Who looks</source>
        <comment>name written with each mark</comment>
        <translation>Qui examine</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Lumière</translation>
    </message>
    <message>
        <source>day</source>
        <comment>theme</comment>
        <translation>jour</translation>
    </message>
    <message>
        <source>night</source>
        <comment>theme</comment>
        <translation>nuit</translation>
    </message>
    <message>
        <source>sun, black on white</source>
        <comment>theme</comment>
        <translation>soleil, noir sur blanc</translation>
    </message>
    <message>
        <source>Hands; gloves get larger places to press</source>
        <translation>Mains ; les gants ont de plus grandes touches</translation>
    </message>
    <message>
        <source>bare hands</source>
        <translation>mains nues</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>gants</translation>
    </message>
    <message>
        <source>Size of words</source>
        <translation>Taille des mots</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>size of words</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Units shown; typing takes either</source>
        <translation>Unités affichées ; la saisie prend les deux</translation>
    </message>
    <message>
        <source>metres, kilometres, kPa, °C</source>
        <translation>mètres, kilomètres, kPa, °C</translation>
    </message>
    <message>
        <source>feet, miles, psi, °F</source>
        <translation>pieds, miles, psi, °F</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>points of this rig: add, hide, how often</source>
        <translation>points de ce véhicule : ajouter, masquer, tous les combien</translation>
    </message>
    <message>
        <source>exchange with other devices</source>
        <translation>échanger avec d&apos;autres appareils</translation>
    </message>
    <message>
        <source>about: version, data, licences</source>
        <translation>à propos : version, données, licences</translation>
    </message>
    <message>
        <source>A buzz in the hand when a mark is written</source>
        <translation>Une vibration dans la main quand une marque est écrite</translation>
    </message>
    <message>
        <source>on</source>
        <comment>setting</comment>
        <translation>oui</translation>
    </message>
    <message>
        <source>off</source>
        <comment>setting</comment>
        <translation>non</translation>
    </message>
    <message>
        <source>A soft tick when a mark is written</source>
        <translation>Un léger tic quand une marque est écrite</translation>
    </message>
</context>
<context>
    <name>SetupFitted</name>
    <message>
        <source>What is usual is chosen already. It decides what the walks ask about.</source>
        <translation>L&apos;habituel est déjà choisi. Cela décide de ce que demandent les tours.</translation>
    </message>
    <message>
        <source>Fitted to it</source>
        <translation>Ce qui y est monté</translation>
    </message>
    <message>
        <source>more that may be fitted</source>
        <translation>ce qui peut encore être monté</translation>
    </message>
    <message>
        <source>What the roof is made of</source>
        <translation>De quoi est fait le toit</translation>
    </message>
    <message>
        <source>May the roof carry a person?</source>
        <translation>Le toit peut-il porter une personne ?</translation>
    </message>
</context>
<context>
    <name>SetupForm</name>
    <message>
        <source>Your rig</source>
        <translation>Votre véhicule</translation>
    </message>
    <message>
        <source>Another rig</source>
        <translation>Un autre véhicule</translation>
    </message>
    <message numerus="yes">
        <source>%n answer(s) to put right, told above</source>
        <translation>
            <numerusform>%n réponse à corriger, dite plus haut</numerusform>
            <numerusform>%n réponses à corriger, dites plus haut</numerusform>
        </translation>
    </message>
    <message>
        <source>Draw it</source>
        <translation>Le dessiner</translation>
    </message>
    <message>
        <source>or take part in a rig of another device</source>
        <translation>ou prendre part au véhicule d&apos;un autre appareil</translation>
    </message>
    <message>
        <source>kind</source>
        <comment>step of a form</comment>
        <translation>genre</translation>
    </message>
    <message>
        <source>measures</source>
        <comment>step of a form</comment>
        <translation>dimensions</translation>
    </message>
    <message>
        <source>fitted</source>
        <comment>step of a form</comment>
        <translation>équipement</translation>
    </message>
    <message>
        <source>plates</source>
        <comment>step of a form</comment>
        <translation>plaques</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Choisissez ce qui s&apos;en approche le plus.</translation>
    </message>
    <message>
        <source>Its sheet</source>
        <comment>of the rig</comment>
        <translation>Sa fiche</translation>
    </message>
    <message>
        <source>The drawing and the points to look at are made from this: four short steps, of which two are enough to begin.</source>
        <translation>Le dessin et les points à examiner en sont faits : quatre étapes courtes, dont deux suffisent pour commencer.</translation>
    </message>
    <message>
        <source>Look round an invented rig first</source>
        <translation>Visiter d&apos;abord un véhicule inventé</translation>
    </message>
    <message>
        <source>two years of walks, trips and findings, all made up</source>
        <translation>deux ans de tours, de trajets et de constats, tout inventé</translation>
    </message>
    <message>
        <source>or bring a logbook back from a backup</source>
        <translation>ou reprendre un carnet d&apos;une sauvegarde</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>L&apos;écrire</translation>
    </message>
    <message>
        <source>the rest can wait</source>
        <translation>le reste peut attendre</translation>
    </message>
    <message>
        <source>Next: how big</source>
        <translation>Ensuite : ses dimensions</translation>
    </message>
    <message>
        <source>Next: what is fitted</source>
        <translation>Ensuite : ce qui est monté</translation>
    </message>
    <message>
        <source>Next: its plates</source>
        <translation>Ensuite : ses plaques</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>Une sauvegarde d&apos;un carnet</translation>
    </message>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Carnets (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>SetupKind</name>
    <message>
        <source>Where is it at home? Lamps, plugs and gas follow that.</source>
        <translation>D&apos;où est-il ? Feux, fiches et gaz en dépendent.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <comment>kind of rig</comment>
        <translation>Qu&apos;est-ce que c&apos;est ?</translation>
    </message>
    <message>
        <source>Measures in; typing takes either</source>
        <translation>Mesures en ; la saisie prend les deux</translation>
    </message>
    <message>
        <source>metres, kPa, °C</source>
        <translation>mètres, kPa, °C</translation>
    </message>
    <message>
        <source>feet, psi, °F</source>
        <translation>pieds, psi, °F</translation>
    </message>
    <message>
        <source>Your name, written beside each mark; may stay empty</source>
        <translation>Votre nom, écrit à côté de chaque marque ; peut rester vide</translation>
    </message>
</context>
<context>
    <name>SetupLists</name>
    <message>
        <source>travel trailer</source>
        <comment>kind of rig</comment>
        <translation>caravane</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <comment>kind of rig</comment>
        <translation>semi-remorque à sellette</translation>
    </message>
    <message>
        <source>folding or pop-up trailer</source>
        <comment>kind of rig</comment>
        <translation>caravane pliante</translation>
    </message>
    <message>
        <source>teardrop</source>
        <comment>kind of rig</comment>
        <translation>mini-caravane</translation>
    </message>
    <message>
        <source>truck camper</source>
        <comment>kind of rig</comment>
        <translation>cellule amovible</translation>
    </message>
    <message>
        <source>motorhome</source>
        <comment>kind of rig</comment>
        <translation>camping-car</translation>
    </message>
    <message>
        <source>camper van</source>
        <comment>kind of rig</comment>
        <translation>fourgon aménagé</translation>
    </message>
    <message>
        <source>North America</source>
        <comment>practice</comment>
        <translation>Amérique du Nord</translation>
    </message>
    <message>
        <source>Europe</source>
        <comment>practice</comment>
        <translation>Europe</translation>
    </message>
    <message>
        <source>Australia and New Zealand</source>
        <comment>practice</comment>
        <translation>Australie et Nouvelle-Zélande</translation>
    </message>
    <message>
        <source>other</source>
        <comment>practice</comment>
        <translation>autre</translation>
    </message>
    <message>
        <source>no</source>
        <comment>answer</comment>
        <translation>non</translation>
    </message>
    <message>
        <source>yes, by its maker&apos;s rating</source>
        <comment>answer</comment>
        <translation>oui, selon son constructeur</translation>
    </message>
    <message>
        <source>not known, counts as no</source>
        <comment>answer</comment>
        <translation>inconnu, compte comme non</translation>
    </message>
    <message>
        <source>rubber or plastic membrane</source>
        <comment>roof</comment>
        <translation>membrane en caoutchouc ou plastique</translation>
    </message>
    <message>
        <source>moulded in one piece</source>
        <comment>roof</comment>
        <translation>moulé d&apos;une pièce</translation>
    </message>
    <message>
        <source>metal sheet</source>
        <comment>roof</comment>
        <translation>tôle</translation>
    </message>
    <message>
        <source>canvas</source>
        <comment>roof</comment>
        <translation>toile</translation>
    </message>
</context>
<context>
    <name>SetupMeasures</name>
    <message>
        <source>Width of the body</source>
        <translation>Largeur de caisse</translation>
    </message>
    <message>
        <source>Height of the body, floor to roof</source>
        <translation>Hauteur de caisse, du plancher au toit</translation>
    </message>
    <message>
        <source>Floor above the ground</source>
        <translation>Plancher au-dessus du sol</translation>
    </message>
    <message>
        <source>Coupling to the front of the body</source>
        <translation>De la tête d&apos;attelage à l&apos;avant de la caisse</translation>
    </message>
    <message>
        <source>left empty: %1, as is usual</source>
        <comment>a measure</comment>
        <translation>si vide : %1, comme d&apos;habitude</translation>
    </message>
    <message>
        <source>What is left empty is drawn as such rigs usually are. Measure when there is time: all of it can be put right later.</source>
        <translation>Ce qui reste vide est dessiné comme le sont d&apos;ordinaire ces véhicules. Mesurez quand il y a le temps : tout se corrige plus tard.</translation>
    </message>
    <message>
        <source>Name</source>
        <comment>of the rig</comment>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Length of the body, without the drawbar</source>
        <translation>Longueur de caisse, sans la flèche</translation>
    </message>
    <message>
        <source>such as 21 ft 6 in or 6.55 m</source>
        <translation>par exemple 21 ft 6 in ou 6,55 m</translation>
    </message>
    <message>
        <source>such as 6.4 m or 21 ft</source>
        <translation>par exemple 6,4 m ou 21 ft</translation>
    </message>
    <message>
        <source>Axles</source>
        <translation>Essieux</translation>
    </message>
    <message>
        <source>more measures: width, height, floor, axles</source>
        <translation>plus de dimensions : largeur, hauteur, plancher, essieux</translation>
    </message>
    <message>
        <source>Axles, each aft of the front of the body</source>
        <translation>Essieux, chacun en arrière de l&apos;avant de caisse</translation>
    </message>
</context>
<context>
    <name>SetupPlates</name>
    <message>
        <source>such as 65 psi or 4.5 bar</source>
        <translation>par exemple 65 psi ou 4,5 bar</translation>
    </message>
    <message>
        <source>such as 450 kPa, 4.5 bar or 65 psi</source>
        <translation>par exemple 450 kPa, 4,5 bar ou 65 psi</translation>
    </message>
    <message>
        <source>such as 7,500 lb or 3400 kg</source>
        <translation>par exemple 7500 lb ou 3400 kg</translation>
    </message>
    <message>
        <source>such as 2500 kg or 5,500 lb</source>
        <translation>par exemple 2500 kg ou 5500 lb</translation>
    </message>
    <message>
        <source>1: pressure, cold, by the placard</source>
        <translation>1 : pression, à froid, selon l&apos;étiquette</translation>
    </message>
    <message>
        <source>2: largest mass of the loaded rig</source>
        <translation>2 : masse maximale du véhicule chargé</translation>
    </message>
    <message>
        <source>1: size, as it stands</source>
        <translation>1 : taille, telle qu&apos;elle est écrite</translation>
    </message>
    <message>
        <source>such as 205/75 R14 105</source>
        <translation>par exemple 205/75 R14 105</translation>
    </message>
    <message>
        <source>1: load range, a letter</source>
        <translation>1 : classe de charge, une lettre</translation>
    </message>
    <message>
        <source>such as D; many tires have none</source>
        <translation>par exemple D ; bien des pneus n&apos;en ont pas</translation>
    </message>
    <message>
        <source>2: largest load, single</source>
        <translation>2 : charge maximale, roue simple</translation>
    </message>
    <message>
        <source>such as 2,040 lb</source>
        <translation>par exemple 2040 lb</translation>
    </message>
    <message>
        <source>such as 925 kg</source>
        <translation>par exemple 925 kg</translation>
    </message>
    <message>
        <source>2: at this pressure, cold</source>
        <translation>2 : à cette pression, à froid</translation>
    </message>
    <message>
        <source>The placard</source>
        <translation>L&apos;étiquette</translation>
    </message>
    <message>
        <source>A plate or a sticker on the body: often near the front of the road side, in a door frame or a locker.</source>
        <translation>Une plaque ou un autocollant sur la caisse : souvent vers l&apos;avant du côté route, dans un cadre de porte ou un coffre.</translation>
    </message>
    <message>
        <source>The tire&apos;s sidewall</source>
        <translation>Le flanc du pneu</translation>
    </message>
    <message>
        <source>3: the date code: the last four figures, week and year. 2326 is week 23 of 2026. The walk asks for it on each wheel.</source>
        <translation>3 : le code de date : les quatre derniers chiffres, semaine et année. 2326 est la semaine 23 de 2026. Le tour le demande à chaque roue.</translation>
    </message>
    <message>
        <source>The wheel</source>
        <translation>La roue</translation>
    </message>
    <message>
        <source>Torque of the wheel nuts, by the maker</source>
        <translation>Couple des écrous de roue, selon le constructeur</translation>
    </message>
    <message>
        <source>such as 100 lb·ft</source>
        <translation>par exemple 100 lb·ft</translation>
    </message>
    <message>
        <source>such as 120 N·m</source>
        <translation>par exemple 120 N·m</translation>
    </message>
    <message>
        <source>Only what stands on the rig counts as its maker&apos;s figure. Leave empty what you have not read; it can be added later.</source>
        <translation>Seul ce qui est écrit sur le véhicule compte comme valeur du constructeur. Laissez vide ce que vous n&apos;avez pas lu ; cela s&apos;ajoute plus tard.</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>Share %1</source>
        <comment>rig</comment>
        <translation>Partager %1</translation>
    </message>
    <message>
        <source>From then on what is written about this rig goes to every store you exchange with: signed by the device, and sealed so that only enrolled devices read it.</source>
        <translation>Désormais ce qui est écrit sur ce véhicule va à chaque dépôt avec qui vous échangez : signé par l&apos;appareil, et scellé pour que seuls les appareils inscrits le lisent.</translation>
    </message>
    <message>
        <source>What the other device may do</source>
        <translation>Ce que peut faire l&apos;autre appareil</translation>
    </message>
    <message>
        <source>Until, a date such as 2027-03-31; may stay empty</source>
        <translation>Jusqu&apos;au, date comme 2027-03-31 ; peut rester vide</translation>
    </message>
    <message>
        <source>A hint to that device only. What ends its access is revoking it.</source>
        <translation>Une indication pour cet appareil seulement. Ce qui finit son accès, c&apos;est de le révoquer.</translation>
    </message>
    <message>
        <source>Show the code</source>
        <translation>Montrer le code</translation>
    </message>
    <message>
        <source>Stands until %1.</source>
        <comment>time</comment>
        <translation>Vaut jusqu&apos;à %1.</translation>
    </message>
    <message>
        <source>Take the answer</source>
        <translation>Prendre la réponse</translation>
    </message>
    <message>
        <source>Other digits there: somebody stands between. Then enroll nobody, and start again.</source>
        <translation>D&apos;autres chiffres là-bas : quelqu&apos;un est entre vous. Alors n&apos;inscrivez personne, et recommencez.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Appareil</translation>
    </message>
    <message>
        <source>Asks to be</source>
        <translation>Demande à être</translation>
    </message>
    <message>
        <source>Will be</source>
        <translation>Sera</translation>
    </message>
    <message>
        <source>The same digits: enroll it</source>
        <translation>Les mêmes chiffres : l&apos;inscrire</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2.</source>
        <comment>device, role</comment>
        <translation>%1 est inscrit comme %2.</translation>
    </message>
    <message>
        <source>Exchange with a store now. The other device then finds the rig at the same store.</source>
        <translation>Échangez maintenant avec un dépôt. L&apos;autre appareil trouve alors le véhicule au même dépôt.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>Aux dépôts</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>recommencer</translation>
    </message>
    <message>
        <source>Show it to nobody but the person who gets it. On the other device: exchange, take part in a rig. There, read the picture by camera, or type or paste the words.</source>
        <translation>Ne le montrez qu&apos;à la personne qui le reçoit. Sur l&apos;autre appareil : échanger, prendre part à un véhicule. Là, lisez l&apos;image par la caméra, ou tapez ou collez les mots.</translation>
    </message>
    <message>
        <source>What the other device shows now, as words</source>
        <translation>Ce que montre maintenant l&apos;autre appareil, en mots</translation>
    </message>
</context>
<context>
    <name>Shift</name>
    <message>
        <source>%1 months</source>
        <comment>with one decimal</comment>
        <translation>%1 mois</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <comment>months</comment>
        <translation>%1 plus tôt</translation>
    </message>
    <message>
        <source>%1 later</source>
        <comment>months</comment>
        <translation>%1 plus tard</translation>
    </message>
    <message>
        <source>shaking on the road</source>
        <translation>secousses en route</translation>
    </message>
    <message>
        <source>how far you drive</source>
        <translation>distance roulée</translation>
    </message>
    <message>
        <source>earlier looks and mends</source>
        <translation>examens et réparations d&apos;avant</translation>
    </message>
    <message>
        <source>a limit that nothing may lengthen</source>
        <translation>une limite que rien n&apos;allonge</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, causes</comment>
        <translation>%1 : %2</translation>
    </message>
    <message numerus="yes">
        <source>The %n day(s) since %1 aged it like %2.</source>
        <translation>
            <numerusform>Le %n jour depuis le %1 l&apos;a vieilli comme %2.</numerusform>
            <numerusform>Les %n jours depuis le %1 l&apos;ont vieilli comme %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SignPad</name>
    <message>
        <source>sign here: %1</source>
        <comment>who signs</comment>
        <translation>signer ici : %1</translation>
    </message>
    <message>
        <source>Signed</source>
        <comment>end of signing</comment>
        <translation>Signé</translation>
    </message>
    <message>
        <source>begin again</source>
        <comment>signing</comment>
        <translation>recommencer</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>signing</comment>
        <translation>pas maintenant</translation>
    </message>
</context>
<context>
    <name>SixDigits</name>
    <message>
        <source>Six digits, on both devices</source>
        <translation>Six chiffres, sur les deux appareils</translation>
    </message>
    <message>
        <source>Six digits: %1</source>
        <comment>code of a meeting</comment>
        <translation>Six chiffres : %1</translation>
    </message>
</context>
<context>
    <name>StandDrawing</name>
    <message>
        <source>stand inside, here</source>
        <translation>placez-vous dedans, ici</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>depuis l&apos;échelle, ou une caméra sur perche</translation>
    </message>
    <message>
        <source>look from the edges</source>
        <translation>regardez des bords</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>placez-vous ici</translation>
    </message>
</context>
<context>
    <name>StarPicture</name>
    <message>
        <source>All rounds are through.</source>
        <translation>Tous les passages sont faits.</translation>
    </message>
    <message>
        <source>Last round, wheel on the ground: to the maker&apos;s figure</source>
        <translation>Dernier passage, roue au sol : à la valeur du constructeur</translation>
    </message>
    <message>
        <source>Second round, wheel on the ground: to about two thirds</source>
        <translation>Deuxième passage, roue au sol : à environ deux tiers</translation>
    </message>
    <message>
        <source>First round, wheel off the ground: to about a third of the maker&apos;s figure</source>
        <translation>Premier passage, roue en l&apos;air : à environ un tiers de la valeur du constructeur</translation>
    </message>
    <message>
        <source>nut %1, %2 of %3</source>
        <comment>which nut, how many</comment>
        <translation>écrou %1, %2 sur %3</translation>
    </message>
    <message>
        <source>%1; press for the next</source>
        <comment>nut 4, 2 of 6</comment>
        <translation>%1 ; pressez pour le suivant</translation>
    </message>
    <message>
        <source>done</source>
        <comment>all nuts of a wheel</comment>
        <translation>fait</translation>
    </message>
    <message>
        <source>Filled: the next nut. Heavy line: to the one after. Double ring: through in this round. Numbered clockwise from the top.</source>
        <translation>Plein : écrou suivant. Trait épais : vers celui d&apos;après. Double anneau : fait dans ce passage. Numérotés dans le sens des aiguilles depuis le haut.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <comment>with the first nut</comment>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>Tightened: the next</source>
        <comment>a nut</comment>
        <translation>Serré : le suivant</translation>
    </message>
    <message>
        <source>one nut back</source>
        <translation>un écrou en arrière</translation>
    </message>
</context>
<context>
    <name>StartSheet</name>
    <message>
        <source>Start a walk</source>
        <translation>Commencer un tour</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>kind of walk, what it is for</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>most likely the one for today</source>
        <translation>sans doute celui d&apos;aujourd&apos;hui</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n ligne</numerusform>
            <numerusform>%n lignes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n minute(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, environ %n minute</numerusform>
            <numerusform>, environ %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n hour(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, environ %n heure</numerusform>
            <numerusform>, environ %n heures</numerusform>
        </translation>
    </message>
    <message>
        <source>all of it</source>
        <comment>time for a walk</comment>
        <translation>tout</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <comment>time for a walk</comment>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>Time there is</source>
        <translation>Temps disponible</translation>
    </message>
</context>
<context>
    <name>StateFigures</name>
    <message>
        <source>under %1 %</source>
        <comment>chance</comment>
        <translation>sous %1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>chance or share</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Nothing was found there at the last look.</source>
        <translation>Rien n&apos;y a été trouvé au dernier examen.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Personne ne l&apos;a encore examiné.</translation>
    </message>
    <message>
        <source>The chance of a defect at the next look is taken as %1, between %2 and %3.</source>
        <translation>La probabilité d&apos;un défaut au prochain examen est prise à %1, entre %2 et %3.</translation>
    </message>
    <message>
        <source>The scale: 50 is a chance of 1 in 100 of the worst kind of harm before the next look; 25 more is ten times as much.</source>
        <translation>L&apos;échelle : 50 est une probabilité de 1 sur 100 du pire dommage avant le prochain examen ; 25 de plus, dix fois autant.</translation>
    </message>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <comment>point, concern</comment>
        <translation>%1 : %2, entre %3 et %4</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more may be as bad</source>
        <translation>
            <numerusform>%1 ; %n autre peut être aussi grave</numerusform>
            <numerusform>%1 ; %n autres peuvent être aussi graves</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tied with %2 more</source>
        <comment>concern, number</comment>
        <translation>%1, à égalité avec %2 autres</translation>
    </message>
    <message>
        <source>Worst item, concern 0 to 100</source>
        <translation>Le pire élément, gravité de 0 à 100</translation>
    </message>
    <message>
        <source>%1, between %2 and %3</source>
        <comment>chance</comment>
        <translation>%1, entre %2 et %3</translation>
    </message>
    <message>
        <source>Chance that one serious item fails before its next look</source>
        <translation>Probabilité qu&apos;un élément grave lâche avant son prochain examen</translation>
    </message>
    <message numerus="yes">
        <source>Of %n item(s) on which life, limb or the rig hangs.</source>
        <translation>
            <numerusform>Sur %n élément dont dépend la vie, un membre ou le véhicule.</numerusform>
            <numerusform>Sur %n éléments dont dépend la vie, un membre ou le véhicule.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each counts with its own chance, as if none knew of another; this is the chance that at least one of them fails.</source>
        <translation>Chacun compte avec sa propre probabilité, comme s&apos;il ignorait les autres ; c&apos;est la probabilité qu&apos;au moins un lâche.</translation>
    </message>
    <message>
        <source>What nobody has looked at counts with the chance of a rig about which nothing is known.</source>
        <translation>Ce que personne n&apos;a examiné compte avec la probabilité d&apos;un véhicule dont on ne sait rien.</translation>
    </message>
    <message>
        <source>Looked at, by weight</source>
        <translation>Examiné, selon le poids</translation>
    </message>
    <message>
        <source>%1 of what weighs</source>
        <comment>share</comment>
        <translation>%1 de ce qui pèse</translation>
    </message>
    <message>
        <source>A point weighs what hangs on it times how likely it would be at fault if nobody ever looked.</source>
        <translation>Un point pèse ce qui en dépend, fois sa probabilité d&apos;être en défaut si personne n&apos;avait jamais regardé.</translation>
    </message>
    <message>
        <source>A look counts until the point is due again.</source>
        <translation>Un examen compte jusqu&apos;à la prochaine échéance du point.</translation>
    </message>
    <message>
        <source>over %1 %</source>
        <comment>chance</comment>
        <translation>plus de %1 %</translation>
    </message>
</context>
<context>
    <name>StatePage</name>
    <message>
        <source>How it stands, and why</source>
        <translation>Où il en est, et pourquoi</translation>
    </message>
    <message>
        <source>Hidden, though the road or fire hangs on it</source>
        <translation>Masqué, bien que la route ou le feu en dépende</translation>
    </message>
</context>
<context>
    <name>StoreForm</name>
    <message>
        <source>Its folder</source>
        <translation>Son dossier</translation>
    </message>
    <message>
        <source>The file, with its folder</source>
        <translation>Le fichier, avec son dossier</translation>
    </message>
    <message>
        <source>Address, https://…</source>
        <translation>Adresse, https://…</translation>
    </message>
    <message>
        <source>What devices meet at</source>
        <translation>Où se rencontrent les appareils</translation>
    </message>
    <message>
        <source>a folder, stick or drive</source>
        <translation>un dossier, une clé ou un disque</translation>
    </message>
    <message>
        <source>a file to hand over</source>
        <translation>un fichier à remettre</translation>
    </message>
    <message>
        <source>a WebDAV address</source>
        <translation>une adresse WebDAV</translation>
    </message>
    <message>
        <source>Name of the store</source>
        <translation>Nom du dépôt</translation>
    </message>
    <message>
        <source>letters, digits and hyphens, such as red-stick</source>
        <translation>lettres, chiffres et tirets, par exemple cle-rouge</translation>
    </message>
    <message>
        <source>choose the folder</source>
        <translation>choisir le dossier</translation>
    </message>
    <message>
        <source>User, if it asks for one</source>
        <translation>Utilisateur, s&apos;il en demande un</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Mot de passe</translation>
    </message>
    <message>
        <source>Kept on this device, for this user of it alone; not locked.</source>
        <translation>Gardé sur cet appareil, pour son seul utilisateur ; non verrouillé.</translation>
    </message>
    <message>
        <source>Add the store</source>
        <translation>Ajouter le dépôt</translation>
    </message>
    <message>
        <source>leave it</source>
        <comment>adds no store</comment>
        <translation>laisser</translation>
    </message>
    <message>
        <source>Folder of the store</source>
        <translation>Dossier du dépôt</translation>
    </message>
    <message>
        <source>Certificate file of its authority; may stay empty</source>
        <translation>Fichier de certificat de son autorité ; peut rester vide</translation>
    </message>
    <message>
        <source>Only for a server of your own whose certificate this device does not know. Then no other authority is believed for it.</source>
        <translation>Seulement pour un serveur à vous dont cet appareil ne connaît pas le certificat. Alors aucune autre autorité n&apos;est crue pour lui.</translation>
    </message>
    <message>
        <source>choose the certificate file</source>
        <translation>choisir le fichier de certificat</translation>
    </message>
    <message>
        <source>Certificate of the authority</source>
        <translation>Certificat de l&apos;autorité</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt)</source>
        <translation>Certificats (*.pem *.crt)</translation>
    </message>
</context>
<context>
    <name>StoreRow</name>
    <message>
        <source>%1: %2</source>
        <comment>kind of store, its place</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Exchange now</source>
        <translation>Échanger maintenant</translation>
    </message>
    <message>
        <source>Exchange now with %1</source>
        <comment>store</comment>
        <translation>Échanger maintenant avec %1</translation>
    </message>
    <message>
        <source>remove</source>
        <comment>a store from the list</comment>
        <translation>ôter</translation>
    </message>
    <message>
        <source>remove %1 from the list; what lies there stays</source>
        <comment>store</comment>
        <translation>ôter %1 de la liste ; ce qui y est reste</translation>
    </message>
</context>
<context>
    <name>SuppliesPage</name>
    <message>
        <source>open findings and what is due</source>
        <translation>constats ouverts et échéances</translation>
    </message>
    <message numerus="yes">
        <source>and what falls due in %n day(s)</source>
        <translation>
            <numerusform>et ce qui vient à échéance dans %n jour</numerusform>
            <numerusform>et ce qui vient à échéance dans %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>À acheter</translation>
    </message>
    <message>
        <source>Nothing found or due uses anything up.</source>
        <translation>Rien de trouvé ni d&apos;échu ne consomme quoi que ce soit.</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>En réserve</translation>
    </message>
    <message>
        <source>count it</source>
        <comment>what is on hand</comment>
        <translation>le compter</translation>
    </message>
</context>
<context>
    <name>Sync</name>
    <message>
        <source>writes everything, enrolls and revokes devices</source>
        <translation>écrit tout, inscrit et révoque des appareils</translation>
    </message>
    <message>
        <source>walks, marks and mends; decides no acceptance and no points</source>
        <translation>tours, marques et réparations ; ne décide ni d&apos;accepter ni des points</translation>
    </message>
    <message>
        <source>walks, reports and mends; licensed work only with a certificate number</source>
        <translation>tours, rapports et réparations ; le travail réservé seulement avec un numéro de certificat</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>lit tout, n&apos;écrit rien</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of the store are damaged and were left out.</source>
        <translation>
            <numerusform>%n fichier du dépôt est abîmé et a été écarté.</numerusform>
            <numerusform>%n fichiers du dépôt sont abîmés et ont été écartés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) are known to be missing: another device still has to bring them.</source>
        <translation>
            <numerusform>On sait qu&apos;il manque %n fichier : un autre appareil doit encore l&apos;apporter.</numerusform>
            <numerusform>On sait qu&apos;il manque %n fichiers : un autre appareil doit encore les apporter.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) cannot be opened here yet: they are kept.</source>
        <translation>
            <numerusform>%n fichier ne peut pas encore s&apos;ouvrir ici : il est gardé.</numerusform>
            <numerusform>%n fichiers ne peuvent pas encore s&apos;ouvrir ici : ils sont gardés.</numerusform>
        </translation>
    </message>
    <message>
        <source>A copy of this logbook went on elsewhere: both ways are kept.</source>
        <translation>Une copie de ce carnet a continué ailleurs : les deux voies sont gardées.</translation>
    </message>
    <message>
        <source>owner</source>
        <comment>role of a device</comment>
        <translation>propriétaire</translation>
    </message>
    <message>
        <source>helper</source>
        <comment>role of a device</comment>
        <translation>aide</translation>
    </message>
    <message>
        <source>technician</source>
        <comment>role of a device</comment>
        <translation>technicien</translation>
    </message>
    <message>
        <source>viewer</source>
        <comment>role of a device</comment>
        <translation>lecteur</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait to be sent.</source>
        <translation>
            <numerusform>%n écriture attend d&apos;être envoyée.</numerusform>
            <numerusform>%n écritures attendent d&apos;être envoyées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) are still on another device.</source>
        <translation>
            <numerusform>%n photo est encore sur un autre appareil.</numerusform>
            <numerusform>%n photos sont encore sur un autre appareil.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) were written differently by two people.</source>
        <translation>
            <numerusform>%n chose a été écrite autrement par deux personnes.</numerusform>
            <numerusform>%n choses ont été écrites autrement par deux personnes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) were set aside.</source>
        <translation>
            <numerusform>%n écriture a été mise de côté.</numerusform>
            <numerusform>%n écritures ont été mises de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>A rig shared with this device has not arrived yet: exchange with a store that has it.</source>
        <translation>Un véhicule partagé avec cet appareil n&apos;est pas encore arrivé : échangez avec un dépôt qui l&apos;a.</translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s)</source>
        <comment>mark beside the word Logbook</comment>
        <translation>
            <numerusform>%n attend</numerusform>
            <numerusform>%n attendent</numerusform>
        </translation>
    </message>
    <message>
        <source>a rig waits</source>
        <comment>mark beside the word Logbook</comment>
        <translation>un véhicule attend</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) sent</source>
        <translation>
            <numerusform>%n écriture envoyée</numerusform>
            <numerusform>%n écritures envoyées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n received</source>
        <comment>entries</comment>
        <translation>
            <numerusform>%n reçue</numerusform>
            <numerusform>%n reçues</numerusform>
        </translation>
    </message>
    <message>
        <source>Both have the same entries.</source>
        <translation>Les deux ont les mêmes écritures.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>entries sent, received</comment>
        <translation>%1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) sent.</source>
        <translation>
            <numerusform>%n photo envoyée.</numerusform>
            <numerusform>%n photos envoyées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) received.</source>
        <translation>
            <numerusform>%n photo reçue.</numerusform>
            <numerusform>%n photos reçues.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n small picture(s) of photos received.</source>
        <translation>
            <numerusform>%n petite image de photo reçue.</numerusform>
            <numerusform>%n petites images de photos reçues.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of other devices were carried on.</source>
        <translation>
            <numerusform>%n fichier d&apos;autres appareils a été transmis.</numerusform>
            <numerusform>%n fichiers d&apos;autres appareils ont été transmis.</numerusform>
        </translation>
    </message>
    <message>
        <source>looking at the store …</source>
        <translation>regard dans le dépôt …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>done, all</comment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>photos: %1</source>
        <comment>done of all</comment>
        <translation>photos : %1</translation>
    </message>
    <message>
        <source>files of entries: %1</source>
        <comment>done of all</comment>
        <translation>fichiers d&apos;écritures : %1</translation>
    </message>
    <message>
        <source>records of devices: %1</source>
        <comment>done of all</comment>
        <translation>fiches d&apos;appareils : %1</translation>
    </message>
    <message>
        <source>last exchange %1</source>
        <comment>date and time</comment>
        <translation>dernier échange %1</translation>
    </message>
    <message>
        <source>no exchange yet</source>
        <translation>pas encore d&apos;échange</translation>
    </message>
    <message>
        <source>nothing new since</source>
        <translation>rien de neuf depuis</translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(ies) since</source>
        <translation>
            <numerusform>%n nouvelle écriture depuis</numerusform>
            <numerusform>%n nouvelles écritures depuis</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) to leave there</source>
        <translation>
            <numerusform>%n écriture à y laisser</numerusform>
            <numerusform>%n écritures à y laisser</numerusform>
        </translation>
    </message>
    <message>
        <source>folder</source>
        <comment>kind of store</comment>
        <translation>dossier</translation>
    </message>
    <message>
        <source>WebDAV address</source>
        <comment>kind of store</comment>
        <translation>adresse WebDAV</translation>
    </message>
    <message>
        <source>file to hand over</source>
        <comment>kind of store</comment>
        <translation>fichier à remettre</translation>
    </message>
    <message>
        <source>%1 (this device)</source>
        <comment>name of a device</comment>
        <translation>%1 (cet appareil)</translation>
    </message>
    <message>
        <source>revoked</source>
        <comment>a device</comment>
        <translation>révoqué</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date</comment>
        <translation>depuis le %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <comment>date</comment>
        <translation>jusqu&apos;au %1</translation>
    </message>
    <message>
        <source>This rig&apos;s logbook is on this device only.</source>
        <translation>Le carnet de ce véhicule n&apos;est que sur cet appareil.</translation>
    </message>
    <message>
        <source>This device was revoked: what is written here stays here.</source>
        <translation>Cet appareil a été révoqué : ce qui s&apos;y écrit y reste.</translation>
    </message>
    <message>
        <source>This device waits to be enrolled by an owner.</source>
        <translation>Cet appareil attend d&apos;être inscrit par un propriétaire.</translation>
    </message>
    <message>
        <source>This device is enrolled as %1.</source>
        <comment>role</comment>
        <translation>Cet appareil est inscrit comme %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n original(s) come with the next exchange with a store that has them.</source>
        <translation>
            <numerusform>%n original vient au prochain échange avec un dépôt qui l&apos;a.</numerusform>
            <numerusform>%n originaux viennent au prochain échange avec un dépôt qui les a.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SyncFault</name>
    <message>
        <source>The store is not there: %1</source>
        <translation>Le dépôt n&apos;est pas là : %1</translation>
    </message>
    <message>
        <source>Put the stick in, or connect the drive, and exchange once more.</source>
        <translation>Insérez la clé, ou branchez le disque, et échangez à nouveau.</translation>
    </message>
    <message>
        <source>The store holds another file of that name: %1</source>
        <translation>Le dépôt tient un autre fichier de ce nom : %1</translation>
    </message>
    <message>
        <source>Nothing was overwritten. Look at the store, or use another one.</source>
        <translation>Rien n&apos;a été écrasé. Regardez le dépôt, ou prenez-en un autre.</translation>
    </message>
    <message>
        <source>The store cannot be reached: %1</source>
        <translation>Le dépôt est hors d&apos;atteinte : %1</translation>
    </message>
    <message>
        <source>Nothing is lost. Exchange again where there is a network.</source>
        <translation>Rien n&apos;est perdu. Échangez à nouveau là où il y a du réseau.</translation>
    </message>
    <message>
        <source>The store or the disk refused: %1</source>
        <translation>Le dépôt ou le disque a refusé : %1</translation>
    </message>
    <message>
        <source>Nothing is lost. See that it is there, has room and may be written to, then exchange again.</source>
        <translation>Rien n&apos;est perdu. Voyez s&apos;il est là, a de la place et se laisse écrire, puis échangez à nouveau.</translation>
    </message>
    <message>
        <source>A word is not as it was shown: %1</source>
        <translation>Un mot n&apos;est pas tel qu&apos;il était montré : %1</translation>
    </message>
    <message>
        <source>Look at this word again.</source>
        <translation>Regardez ce mot à nouveau.</translation>
    </message>
    <message>
        <source>Words are missing, or are of two sets.</source>
        <translation>Des mots manquent, ou sont de deux séries.</translation>
    </message>
    <message>
        <source>Type or paste all the words as they are shown.</source>
        <translation>Tapez ou collez tous les mots tels que montrés.</translation>
    </message>
    <message>
        <source>These words are no offer to share a rig.</source>
        <translation>Ces mots n&apos;offrent pas de partager un véhicule.</translation>
    </message>
    <message>
        <source>Type the words of the owner&apos;s device.</source>
        <translation>Tapez les mots de l&apos;appareil du propriétaire.</translation>
    </message>
    <message>
        <source>These words are no answer to the code shown here.</source>
        <translation>Ces mots ne répondent pas au code montré ici.</translation>
    </message>
    <message>
        <source>Show the code again, and answer it on the other device once more.</source>
        <translation>Montrez à nouveau le code, et répondez-y encore une fois sur l&apos;autre appareil.</translation>
    </message>
    <message>
        <source>The code stood ten minutes and is over, or a clock is wrong.</source>
        <translation>Le code a tenu dix minutes et c&apos;est fini, ou une horloge est fausse.</translation>
    </message>
    <message>
        <source>Show a new code.</source>
        <translation>Montrez un nouveau code.</translation>
    </message>
    <message>
        <source>Only an owner&apos;s device may do this.</source>
        <translation>Seul l&apos;appareil d&apos;un propriétaire peut faire cela.</translation>
    </message>
    <message>
        <source>Do it on an owner&apos;s device.</source>
        <translation>Faites-le sur l&apos;appareil d&apos;un propriétaire.</translation>
    </message>
    <message>
        <source>This is the last owner&apos;s device.</source>
        <translation>C&apos;est l&apos;appareil du dernier propriétaire.</translation>
    </message>
    <message>
        <source>Enroll another owner first.</source>
        <translation>Inscrivez d&apos;abord un autre propriétaire.</translation>
    </message>
    <message>
        <source>This logbook shares that rig already, with other devices.</source>
        <translation>Ce carnet partage déjà ce véhicule, avec d&apos;autres appareils.</translation>
    </message>
    <message>
        <source>Use the sharing that is there, or a logbook of its own.</source>
        <translation>Prenez le partage qui existe, ou un carnet à part.</translation>
    </message>
    <message>
        <source>This was settled meanwhile.</source>
        <translation>C&apos;est réglé entre-temps.</translation>
    </message>
    <message>
        <source>Nothing has to be done.</source>
        <translation>Il n&apos;y a rien à faire.</translation>
    </message>
    <message>
        <source>There is a store named %1 already.</source>
        <translation>Il y a déjà un dépôt nommé %1.</translation>
    </message>
    <message>
        <source>Give it another name.</source>
        <translation>Donnez-lui un autre nom.</translation>
    </message>
    <message>
        <source>The store needs a name of letters, digits and hyphens.</source>
        <translation>Le dépôt demande un nom de lettres, chiffres et tirets.</translation>
    </message>
    <message>
        <source>Type one.</source>
        <translation>Tapez-en un.</translation>
    </message>
    <message>
        <source>This address cannot be used.</source>
        <translation>Cette adresse ne peut pas servir.</translation>
    </message>
    <message>
        <source>Write it as https://host/folder/, without a user or a password in it.</source>
        <translation>Écrivez-la comme https://host/folder/, sans utilisateur ni mot de passe dedans.</translation>
    </message>
    <message>
        <source>This is no date: %1</source>
        <translation>Ce n&apos;est pas une date : %1</translation>
    </message>
    <message>
        <source>Write it as 2027-03-31.</source>
        <translation>Écrivez-la comme 2027-03-31.</translation>
    </message>
    <message>
        <source>These words are no key on paper.</source>
        <translation>Ces mots ne sont pas une clé sur papier.</translation>
    </message>
    <message>
        <source>Type the 24 words of the paper.</source>
        <translation>Tapez les 24 mots du papier.</translation>
    </message>
    <message>
        <source>This store has no rig of that key, or one with another mark: %1</source>
        <translation>Ce dépôt n&apos;a aucun véhicule de cette clé, ou un avec une autre marque : %1</translation>
    </message>
    <message>
        <source>Exchange once from a device that has the rig, or take another store. A rig with another mark was made up by somebody.</source>
        <translation>Échangez une fois depuis un appareil qui a le véhicule, ou prenez un autre dépôt. Un véhicule à autre marque a été inventé par quelqu&apos;un.</translation>
    </message>
    <message>
        <source>Several rigs at this store name that key an owner: %1</source>
        <translation>Plusieurs véhicules de ce dépôt donnent cette clé pour propriétaire : %1</translation>
    </message>
    <message>
        <source>Type the mark that stands beside the words.</source>
        <translation>Tapez la marque à côté des mots.</translation>
    </message>
    <message>
        <source>No code was found in this picture.</source>
        <translation>Aucun code trouvé dans cette image.</translation>
    </message>
    <message>
        <source>Take it straight on and near, without glare; or type the words.</source>
        <translation>Prenez-la de face et de près, sans reflet ; ou tapez les mots.</translation>
    </message>
    <message>
        <source>This file is no picture that can be read: %1</source>
        <translation>Ce fichier n&apos;est pas une image lisible : %1</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG picture.</source>
        <translation>Choisissez une image JPEG ou PNG.</translation>
    </message>
</context>
<context>
    <name>SyncPage</name>
    <message>
        <source>Exchange</source>
        <comment>with other devices</comment>
        <translation>Échange</translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Rien n&apos;attend.</translation>
    </message>
    <message>
        <source>Look at what differs</source>
        <translation>Regarder ce qui diffère</translation>
    </message>
    <message>
        <source>both versions are kept until a person chooses</source>
        <translation>les deux versions restent jusqu&apos;à ce que quelqu&apos;un choisisse</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Dépôts</translation>
    </message>
    <message>
        <source>No store yet. A store is a place where devices leave what is new for each other: a stick, a shared folder, a drive.</source>
        <translation>Pas encore de dépôt. Un dépôt est un lieu où les appareils se laissent ce qui est neuf : une clé, un dossier partagé, un disque.</translation>
    </message>
    <message>
        <source>add a store</source>
        <translation>ajouter un dépôt</translation>
    </message>
    <message>
        <source>Devices of this rig</source>
        <translation>Appareils de ce véhicule</translation>
    </message>
    <message>
        <source>Share with one more device</source>
        <translation>Partager avec un appareil de plus</translation>
    </message>
    <message>
        <source>Share this rig</source>
        <translation>Partager ce véhicule</translation>
    </message>
    <message>
        <source>take part in a rig of another device</source>
        <translation>prendre part au véhicule d&apos;un autre appareil</translation>
    </message>
    <message>
        <source>What goes into a store is sealed: who finds a stick reads nothing of it. The logbook on this device is not locked beyond what the device itself does.</source>
        <translation>Ce qui entre dans un dépôt est scellé : qui trouve une clé n&apos;en lit rien. Le carnet sur cet appareil n&apos;est pas verrouillé au-delà de ce que fait l&apos;appareil.</translation>
    </message>
    <message>
        <source>ask for the photos in full</source>
        <translation>demander les photos entières</translation>
    </message>
    <message>
        <source>ask for the originals of photos that are on other devices</source>
        <translation>demander les originaux de photos qui sont sur d&apos;autres appareils</translation>
    </message>
    <message>
        <source>Photos in full, when exchanging</source>
        <translation>Photos entières, à l&apos;échange</translation>
    </message>
    <message>
        <source>those asked for</source>
        <comment>photos</comment>
        <translation>celles demandées</translation>
    </message>
    <message>
        <source>all of them: on Wi-Fi</source>
        <comment>photos</comment>
        <translation>toutes : en Wi-Fi</translation>
    </message>
    <message>
        <source>Entries and small pictures of photos always come.</source>
        <translation>Les écritures et petites images de photos viennent toujours.</translation>
    </message>
    <message>
        <source>make a key on paper</source>
        <translation>faire une clé sur papier</translation>
    </message>
</context>
<context>
    <name>TapeRow</name>
    <message>
        <source>%1: %2</source>
        <comment>line of the tape, what was written</comment>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>Thing</name>
    <message>
        <source>The rig</source>
        <translation>Le véhicule</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Tour</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marque</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Look at a finding</source>
        <translation>Examen d&apos;un constat</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Réparation</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Trajet</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Séjour</translation>
    </message>
    <message>
        <source>Weather record</source>
        <translation>Relevé météo</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Événement</translation>
    </message>
    <message>
        <source>Own point</source>
        <translation>Point à vous</translation>
    </message>
    <message>
        <source>Hidden point</source>
        <translation>Point masqué</translation>
    </message>
    <message>
        <source>Own interval</source>
        <translation>Intervalle à vous</translation>
    </message>
    <message>
        <source>Drawing on a photo</source>
        <translation>Dessin sur une photo</translation>
    </message>
    <message>
        <source>Supply on hand</source>
        <translation>Fourniture en réserve</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Acceptation</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marque</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>how it was looked at</source>
        <translation>comment il a été examiné</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>degré</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>défaut</translation>
    </message>
    <message>
        <source>place</source>
        <translation>endroit</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>what was done, in words</source>
        <translation>ce qui a été fait, en mots</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>pièces</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>coût</translation>
    </message>
    <message>
        <source>findings it closes</source>
        <translation>constats qu&apos;il clôt</translation>
    </message>
    <message>
        <source>when it was finished</source>
        <translation>quand c&apos;était fini</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>équipements</translation>
    </message>
    <message>
        <source>measures</source>
        <translation>dimensions</translation>
    </message>
    <message>
        <source>ratings</source>
        <translation>limites</translation>
    </message>
    <message>
        <source>tires</source>
        <translation>pneus</translation>
    </message>
    <message>
        <source>wheels</source>
        <translation>roues</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>months</source>
        <translation>mois</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>légende</translation>
    </message>
    <message>
        <source>lines drawn</source>
        <translation>traits dessinés</translation>
    </message>
    <message>
        <source>written by a device that does not belong to this rig</source>
        <translation>écrit par un appareil qui n&apos;est pas de ce véhicule</translation>
    </message>
    <message>
        <source>written after its device was revoked</source>
        <translation>écrit après la révocation de son appareil</translation>
    </message>
    <message>
        <source>carried for another device by one that is no owner</source>
        <translation>porté pour un autre appareil par un qui n&apos;est pas propriétaire</translation>
    </message>
    <message>
        <source>it belongs to another rig</source>
        <translation>il appartient à un autre véhicule</translation>
    </message>
    <message>
        <source>a viewer writes nothing</source>
        <translation>un lecteur n&apos;écrit rien</translation>
    </message>
    <message>
        <source>only an owner decides this</source>
        <translation>seul un propriétaire décide cela</translation>
    </message>
    <message>
        <source>a technician does not change the rig</source>
        <translation>un technicien ne change pas le véhicule</translation>
    </message>
    <message>
        <source>a mend of what is licensed needs a certificate number</source>
        <translation>la réparation réservée demande un numéro de certificat</translation>
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
        <translation>ôté</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>value of a field</comment>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <comment>value of a field</comment>
        <translation>non</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>value of a field</comment>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>field, value</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>thing, what is known of it</comment>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>TirePicture</name>
    <message>
        <source>picture of a tire&apos;s sidewall: 1 size, 2 largest load and pressure, 3 date code</source>
        <translation>dessin d&apos;un flanc de pneu : 1 taille, 2 charge et pression maximales, 3 code de date</translation>
    </message>
</context>
<context>
    <name>TrackSketch</name>
    <message>
        <source>sketch of the track</source>
        <translation>croquis de la trace</translation>
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
        <translation>%1 de moins par an.</translation>
    </message>
    <message>
        <source>%1 more a year.</source>
        <translation>%1 de plus par an.</translation>
    </message>
    <message>
        <source>Likely to meet the limit about %1, from %2 to %3.</source>
        <translation>Atteint sans doute la limite vers %1, de %2 à %3.</translation>
    </message>
    <message>
        <source>There is no limit to hold it against.</source>
        <translation>Il n&apos;y a pas de limite à quoi comparer.</translation>
    </message>
    <message>
        <source>Too few readings for a line: three are wanted.</source>
        <translation>Trop peu de mesures pour une ligne : il en faut trois.</translation>
    </message>
    <message>
        <source>The last reading is past the limit.</source>
        <translation>La dernière mesure dépasse la limite.</translation>
    </message>
    <message>
        <source>It does not move toward the limit.</source>
        <translation>Elle ne va pas vers la limite.</translation>
    </message>
    <message>
        <source>The limit is more than thirty years off by these readings; that says little.</source>
        <translation>Selon ces mesures, la limite est à plus de trente ans ; cela dit peu.</translation>
    </message>
    <message>
        <source>It grew back. Was it replaced? Write the mend down.</source>
        <translation>Elle a regagné. A-t-on remplacé ? Écrivez la réparation.</translation>
    </message>
    <message>
        <source>The readings do not tell when it meets the limit.</source>
        <translation>Les mesures ne disent pas quand la limite est atteinte.</translation>
    </message>
    <message>
        <source>%1 on %2.</source>
        <comment>reading, date</comment>
        <translation>%1 le %2.</translation>
    </message>
    <message>
        <source>The square lies far off and is left out.</source>
        <translation>Le carré est loin et reste hors de la ligne.</translation>
    </message>
    <message>
        <source>Open dots: before it was replaced.</source>
        <translation>Points ouverts : avant le remplacement.</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>reading, sentence</comment>
        <translation>%1, graphique : %2</translation>
    </message>
</context>
<context>
    <name>TrendPage</name>
    <message>
        <source>No reading was taken here yet.</source>
        <translation>Aucune mesure n&apos;a encore été prise ici.</translation>
    </message>
    <message>
        <source>Readings over time</source>
        <translation>Mesures dans le temps</translation>
    </message>
    <message>
        <source>A reading is typed on a walk, at a line that measures something, such as the tires. Two of them make a trend.</source>
        <translation>Une mesure se saisit pendant un tour, à une ligne qui mesure quelque chose, comme les pneus. Deux font une tendance.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date, reading</comment>
        <translation>%1 : %2</translation>
    </message>
</context>
<context>
    <name>Trip</name>
    <message>
        <source>measured on the way</source>
        <translation>mesuré en route</translation>
    </message>
    <message>
        <source>from this rig&apos;s measured trips</source>
        <translation>des trajets mesurés de ce véhicule</translation>
    </message>
    <message>
        <source>from the road told by hand; common practice</source>
        <translation>de la route dite à la main ; pratique courante</translation>
    </message>
    <message>
        <source>no road told, nothing measured: a usual road is taken</source>
        <translation>pas de route dite, rien de mesuré : on prend une route habituelle</translation>
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
        <translation>milieu %1 m/km, dixième le plus rude dès %2 m/km, sur %3</translation>
    </message>
    <message>
        <source>an index of this rig alone: not calibrated</source>
        <translation>un indice de ce seul véhicule : non étalonné</translation>
    </message>
    <message>
        <source>the sensor met its end: at least so much</source>
        <translation>le capteur a atteint sa fin : au moins autant</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) that aged the seals like %1</source>
        <translation>
            <numerusform>%n jour qui a vieilli les joints comme %1</numerusform>
            <numerusform>%n jours qui ont vieilli les joints comme %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 that shook like %2</source>
        <comment>distances</comment>
        <translation>%1 qui ont secoué comme %2</translation>
    </message>
    <message>
        <source>Seals: like %1 to %2 days; estimated from the place&apos;s usual weather or its records.</source>
        <translation>Joints : comme %1 à %2 jours ; estimé d&apos;après le temps habituel du lieu ou ses relevés.</translation>
    </message>
    <message>
        <source>What the weather did is not known: the trip has no place, or there are no data for it.</source>
        <translation>Ce qu&apos;a fait le temps n&apos;est pas connu : le trajet n&apos;a pas de lieu, ou il n&apos;y a pas de données.</translation>
    </message>
    <message>
        <source>Shake: like %1 to %2; %3.</source>
        <comment>distances, basis</comment>
        <translation>Secousses : comme %1 à %2 ; %3.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Of it straight lines over gaps</source>
        <translation>Dont lignes droites sur les trous</translation>
    </message>
    <message>
        <source>Start to end</source>
        <translation>Du début à la fin</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>Up and down</source>
        <translation>Montées et descentes</translation>
    </message>
    <message>
        <source>%1 up, %2 down</source>
        <comment>climb</comment>
        <translation>%1 de montée, %2 de descente</translation>
    </message>
    <message>
        <source>Lowest and highest</source>
        <translation>Plus bas et plus haut</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>altitudes</comment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>Positions left out</source>
        <translation>Positions écartées</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Lu de</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>number of a stop, time</comment>
        <translation>%1 : %2</translation>
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
        <translation>Carte du trajet, nord en haut : de %1 à %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n stop(s).</source>
        <translation>
            <numerusform>%n arrêt.</numerusform>
            <numerusform>%n arrêts.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>On ne sait pas ici où est la mer.</translation>
    </message>
    <message>
        <source>No coast is near.</source>
        <translation>Aucune côte proche.</translation>
    </message>
</context>
<context>
    <name>TripPage</name>
    <message>
        <source>No trip yet. A track from a phone or a receiver, as GPX or NMEA, makes one.</source>
        <translation>Pas encore de trajet. Une trace d&apos;un téléphone ou d&apos;un récepteur, en GPX ou NMEA, en fait un.</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Prendre une trace</translation>
    </message>
    <message>
        <source>This trip has no line to draw: it was written by hand, or its track held too few positions.</source>
        <translation>Ce trajet n&apos;a pas de tracé : écrit à la main, ou trop peu de positions dans sa trace.</translation>
    </message>
    <message>
        <source>North is up. Ring: start. Dot: end. Numbers: stops of five minutes or more. A broken line is a worse road.</source>
        <translation>Le nord est en haut. Anneau : départ. Point : fin. Numéros : arrêts de cinq minutes ou plus. Trait brisé : route pire.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Arrêts</translation>
    </message>
    <message>
        <source>take in another log of its shaking</source>
        <translation>prendre un autre relevé de ses secousses</translation>
    </message>
    <message>
        <source>take in a log of its shaking</source>
        <translation>prendre un relevé de ses secousses</translation>
    </message>
    <message>
        <source>Coast: made from Natural Earth, public domain.</source>
        <translation>Côtes : faites avec Natural Earth, domaine public.</translation>
    </message>
    <message>
        <source>Roughness along the way, m/km</source>
        <translation>Rudesse en chemin, m/km</translation>
    </message>
    <message>
        <source>From where the log began. Full bars: rough, over the upper broken line. Under the lower one: smooth. A gap: too slow, uneven or handled.</source>
        <translation>Depuis le début du relevé. Barres pleines : rude, au-dessus du trait brisé du haut. Sous celui du bas : lisse. Trou : trop lent, irrégulier ou manipulé.</translation>
    </message>
    <message>
        <source>Trips</source>
        <translation>Trajets</translation>
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
        <translation>valeur du constructeur</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>fitted to what was measured</source>
        <translation>ajusté à ce qui a été mesuré</translation>
    </message>
    <message>
        <source>before anything was measured</source>
        <translation>avant toute mesure</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>pratique courante</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculé</translation>
    </message>
    <message>
        <source>travel trailer</source>
        <translation>caravane</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <translation>semi-remorque à sellette</translation>
    </message>
    <message>
        <source>folding trailer</source>
        <translation>caravane pliante</translation>
    </message>
    <message>
        <source>teardrop</source>
        <translation>mini-caravane</translation>
    </message>
    <message>
        <source>truck camper</source>
        <translation>cellule amovible</translation>
    </message>
    <message>
        <source>motorhome</source>
        <translation>camping-car</translation>
    </message>
    <message>
        <source>camper van</source>
        <translation>fourgon aménagé</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a finding</comment>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>mended, waiting for a look that confirms it</source>
        <translation>réparé, attend un examen qui le confirme</translation>
    </message>
    <message>
        <source>mended, and seen so</source>
        <translation>réparé, et vu ainsi</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>disparu, sans réparation</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>remplacé</translation>
    </message>
    <message>
        <source>sealed again</source>
        <translation>joint refait</translation>
    </message>
    <message>
        <source>tightened to the maker&apos;s figure</source>
        <translation>serré à la valeur du constructeur</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>nettoyé</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>graissé</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>réglé</translation>
    </message>
    <message>
        <source>other work</source>
        <translation>autre travail</translation>
    </message>
    <message>
        <source>%1 can be read two ways. Write %2 or %3.</source>
        <translation>%1 se lit de deux façons. Écrivez %2 ou %3.</translation>
    </message>
</context>
<context>
    <name>WaitingPhotos</name>
    <message>
        <source>No photo waits for its mark.</source>
        <translation>Aucune photo n&apos;attend sa marque.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark; press those of this finding</source>
        <translation>
            <numerusform>%n photo attend une marque ; pressez-la si elle est de ce constat</numerusform>
            <numerusform>%n photos attendent une marque ; pressez celles de ce constat</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark</source>
        <translation>
            <numerusform>%n photo attend une marque</numerusform>
            <numerusform>%n photos attendent une marque</numerusform>
        </translation>
    </message>
    <message>
        <source>waiting, number %1</source>
        <comment>photo</comment>
        <translation>en attente, numéro %1</translation>
    </message>
    <message>
        <source>put away</source>
        <comment>a photo</comment>
        <translation>mise à part</translation>
    </message>
    <message numerus="yes">
        <source>bring back %n put away</source>
        <comment>photos</comment>
        <translation>
            <numerusform>reprendre %n mise à part</numerusform>
            <numerusform>reprendre %n mises à part</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WalkBudget</name>
    <message>
        <source>Left out, though on the hold list: %1.</source>
        <comment>points</comment>
        <translation>Laissé de côté, quoique sur la liste d&apos;arrêt : %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>points</comment>
        <translation>
            <numerusform>%1 et %n autre</numerusform>
            <numerusform>%1 et %n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>Leaves out %1 of %2 points: %3.</source>
        <translation>Laisse de côté %1 points sur %2 : %3.</translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message numerus="yes">
        <source>%n line(s) left</source>
        <comment>of the walk</comment>
        <translation>
            <numerusform>reste %n ligne</numerusform>
            <numerusform>reste %n lignes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>stand; lines left</comment>
        <translation>%1 ; %2</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>toutes les lignes</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>annuler</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>passe d&apos;un coup d&apos;œil</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>finir ici</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>urgence</translation>
    </message>
</context>
<context>
    <name>WalkRow</name>
    <message>
        <source>%1, still open</source>
        <comment>kind of walk</comment>
        <translation>%1, encore ouvert</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, par %2</translation>
    </message>
</context>
<context>
    <name>WalkWords</name>
    <message>
        <source>could not look</source>
        <comment>act</comment>
        <translation>non vu</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>act</comment>
        <translation>non monté</translation>
    </message>
    <message>
        <source>look again later</source>
        <comment>act</comment>
        <translation>revoir plus tard</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>passe d&apos;un coup d&apos;œil</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>toutes les lignes</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>finir ici</translation>
    </message>
    <message>
        <source>photos now, marks after</source>
        <translation>photos maintenant, marques après</translation>
    </message>
</context>
<context>
    <name>WeighPicture</name>
    <message>
        <source>coupled</source>
        <comment>on the scale</comment>
        <translation>attelé</translation>
    </message>
    <message>
        <source>with bars</source>
        <comment>on the scale</comment>
        <translation>avec barres</translation>
    </message>
    <message>
        <source>alone</source>
        <comment>on the scale</comment>
        <translation>seul</translation>
    </message>
</context>
<context>
    <name>WentPage</name>
    <message>
        <source>How it went</source>
        <translation>Au fil du temps</translation>
    </message>
    <message>
        <source>Of what</source>
        <comment>a plot is about it</comment>
        <translation>De quoi</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>one of several plots</comment>
        <translation>Lequel</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calcul en cours…</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>title, sentence</comment>
        <translation>%1, graphique : %2</translation>
    </message>
    <message>
        <source>Press the plot, or go along it, to read its numbers.</source>
        <translation>Appuyez sur le graphique, ou parcourez-le, pour lire ses nombres.</translation>
    </message>
    <message>
        <source>earlier</source>
        <comment>go back in time along a plot</comment>
        <translation>plus tôt</translation>
    </message>
    <message>
        <source>later</source>
        <comment>go on in time along a plot</comment>
        <translation>plus tard</translation>
    </message>
    <message>
        <source>the last two years alone</source>
        <translation>les deux dernières années seules</translation>
    </message>
    <message>
        <source>every month there is</source>
        <translation>tous les mois qu&apos;il y a</translation>
    </message>
    <message>
        <source>fold the numbers</source>
        <translation>replier les nombres</translation>
    </message>
    <message>
        <source>all its numbers</source>
        <translation>tous ses nombres</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Enregistrer : %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Écrit : %1</translation>
    </message>
</context>
<context>
    <name>WhatIfPage</name>
    <message>
        <source>What if</source>
        <translation>Et si</translation>
    </message>
    <message>
        <source>Say where it would stand and how far it would go: the dates that move are worked out. Nothing of this is written into the logbook.</source>
        <translation>Dites où il serait et jusqu&apos;où il irait : les dates qui bougent sont calculées. Rien de cela n&apos;est écrit au carnet.</translation>
    </message>
    <message>
        <source>take away</source>
        <comment>a leg of the plan</comment>
        <translation>ôter</translation>
    </message>
    <message>
        <source>take away %1</source>
        <translation>ôter %1</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Calcul en cours…</translation>
    </message>
    <message>
        <source>One leg more</source>
        <translation>Une étape de plus</translation>
    </message>
    <message>
        <source>The first leg</source>
        <translation>La première étape</translation>
    </message>
</context>
<context>
    <name>WheelMap</name>
    <message>
        <source>front</source>
        <comment>of the rig, on a drawing from above</comment>
        <translation>avant</translation>
    </message>
    <message>
        <source>%1: no reading was taken yet</source>
        <comment>a wheel</comment>
        <translation>%1 : aucune mesure encore prise</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>ses mesures dans le temps</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>valeur du constructeur : non saisie</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>limits, whose</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>low</source>
        <comment>a reading</comment>
        <translation>basse</translation>
    </message>
    <message>
        <source>high</source>
        <comment>a reading</comment>
        <translation>haute</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sans mesure</translation>
    </message>
</context>
<context>
    <name>WhyFacts</name>
    <message>
        <source>pass, at a glance</source>
        <translation>passe, d&apos;un coup d&apos;œil</translation>
    </message>
    <message>
        <source>pass, measured</source>
        <translation>passe, mesuré</translation>
    </message>
    <message>
        <source>pass, looked at</source>
        <translation>passe, examiné</translation>
    </message>
    <message>
        <source>attention</source>
        <translation>attention</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>non monté</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>non vu : %1</translation>
    </message>
    <message>
        <source>time, as it ages it</source>
        <translation>le temps, qui le vieillit</translation>
    </message>
    <message>
        <source>distance, as the road uses it up</source>
        <translation>la distance, qui l&apos;use</translation>
    </message>
    <message>
        <source>nobody has looked at it yet</source>
        <translation>personne ne l&apos;a encore examiné</translation>
    </message>
    <message>
        <source>its readings, on their way to a limit</source>
        <translation>ses mesures, en route vers une limite</translation>
    </message>
    <message>
        <source>each move</source>
        <translation>chaque départ</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Intervalle</translation>
    </message>
    <message>
        <source>What makes it due</source>
        <translation>Ce qui le met à échéance</translation>
    </message>
    <message>
        <source>Rests on</source>
        <comment>what a figure rests on</comment>
        <translation>Repose sur</translation>
    </message>
    <message>
        <source>Time to look from</source>
        <translation>Temps d&apos;examiner dès</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>what, who</comment>
        <translation>%1, par %2</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Nothing has a date yet: dates come with the first walk.</source>
        <translation>Rien n&apos;a encore de date : les dates viennent avec le premier tour.</translation>
    </message>
    <message>
        <source>How the date comes about</source>
        <translation>D&apos;où vient la date</translation>
    </message>
    <message>
        <source>From the catalogue&apos;s date down: a step to the left is sooner, to the right later. Ring: likely, on its line from early to late. Upright: today.</source>
        <translation>De la date du catalogue vers le bas : un pas à gauche, plus tôt ; à droite, plus tard. Anneau : probable, sur son trait de tôt à tard. Montant : aujourd&apos;hui.</translation>
    </message>
    <message>
        <source>What it goes by</source>
        <translation>Sur quoi il se règle</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>ses mesures dans le temps</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>et s&apos;il va ailleurs</translation>
    </message>
    <message>
        <source>Last looks and mends</source>
        <translation>Derniers examens et réparations</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aucun encore.</translation>
    </message>
    <message>
        <source>What the weather is taken from</source>
        <translation>D&apos;où est pris le temps qu&apos;il a fait</translation>
    </message>
    <message>
        <source>Where the catalogue has it from</source>
        <translation>D&apos;où le tient le catalogue</translation>
    </message>
    <message>
        <source>Why it is due then</source>
        <translation>Pourquoi l&apos;échéance tombe là</translation>
    </message>
</context>
<context>
    <name>WhyPicture</name>
    <message>
        <source>by the catalogue alone</source>
        <translation>par le catalogue seul</translation>
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
        <translation>Le catalogue seul : %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>small causes together</source>
        <translation>petites causes ensemble</translation>
    </message>
    <message>
        <source>Likely: %1.</source>
        <translation>Probable : %1.</translation>
    </message>
</context>
<context>
    <name>ZoomRow</name>
    <message>
        <source>drawing nearer</source>
        <translation>dessin plus près</translation>
    </message>
    <message>
        <source>drawing farther</source>
        <translation>dessin plus loin</translation>
    </message>
    <message>
        <source>whole</source>
        <comment>the whole drawing</comment>
        <translation>entier</translation>
    </message>
    <message>
        <source>left</source>
        <comment>move the drawing</comment>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>right</source>
        <comment>move the drawing</comment>
        <translation>à droite</translation>
    </message>
    <message>
        <source>up</source>
        <comment>move the drawing</comment>
        <translation>en haut</translation>
    </message>
    <message>
        <source>down</source>
        <comment>move the drawing</comment>
        <translation>en bas</translation>
    </message>
    <message>
        <source>every finding ever</source>
        <translation>tout constat depuis toujours</translation>
    </message>
</context>
<context>
    <name>snugwalk::BenchModel</name>
    <message>
        <source>To keep it, start a walk and mark “%1” first.</source>
        <comment>a point</comment>
        <translation>Pour le garder, commencez un tour et marquez d&apos;abord « %1 ».</translation>
    </message>
    <message>
        <source>To keep it, mark “%1” on this walk first: what it got is said by a person.</source>
        <comment>a point</comment>
        <translation>Pour le garder, marquez d&apos;abord « %1 » dans ce tour : ce qu&apos;il a reçu, c&apos;est une personne qui le dit.</translation>
    </message>
    <message>
        <source>“%1” is on attention: its readings go with the finding.</source>
        <comment>a point</comment>
        <translation>« %1 » est sur attention : ses mesures vont avec le constat.</translation>
    </message>
    <message>
        <source>%1, on “%2”</source>
        <comment>reading, point</comment>
        <translation>%1, sur « %2 »</translation>
    </message>
    <message>
        <source>Still to type: %1.</source>
        <translation>Reste à saisir : %1.</translation>
    </message>
    <message>
        <source>Kept on this walk: %1.</source>
        <translation>Gardé dans ce tour : %1.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BookModel</name>
    <message>
        <source>There are no two walks to lay side by side yet.</source>
        <translation>Il n&apos;y a pas encore deux tours à mettre côte à côte.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BooksModel</name>
    <message>
        <source>Making the invented rig …</source>
        <translation>Création du véhicule inventé …</translation>
    </message>
    <message>
        <source>Making the invented rig: %1 of %2</source>
        <translation>Création du véhicule inventé : %1 sur %2</translation>
    </message>
    <message>
        <source>The invented rig is gone from this device.</source>
        <translation>Le véhicule inventé n&apos;est plus sur cet appareil.</translation>
    </message>
    <message>
        <source>Copying the logbook with its photos …</source>
        <translation>Copie du carnet avec ses photos …</translation>
    </message>
    <message>
        <source>Copied with its photos: %1</source>
        <translation>Copié avec ses photos : %1</translation>
    </message>
    <message>
        <source>Copying and checking the backup …</source>
        <translation>Copie et vérification de la sauvegarde …</translation>
    </message>
    <message>
        <source>Checked and opened: %1</source>
        <translation>Vérifié et ouvert : %1</translation>
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
        <translation>Saisissez d&apos;abord la longueur, par exemple 120 mm ou 4 3/4 in.</translation>
    </message>
    <message>
        <source>Not understood: %1. Write it for example as 120 mm or 4 3/4 in.</source>
        <translation>Pas compris : %1. Écrivez-le par exemple comme 120 mm ou 4 3/4 in.</translation>
    </message>
</context>
<context>
    <name>snugwalk::DueModel</name>
    <message>
        <source>before each move</source>
        <translation>avant chaque départ</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>pas encore examiné</translation>
    </message>
    <message numerus="yes">
        <source>past due %n days</source>
        <translation>
            <numerusform>échéance dépassée de %n jour</numerusform>
            <numerusform>échéance dépassée de %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>due now, at the latest %1</source>
        <translation>à échéance maintenant, au plus tard le %1</translation>
    </message>
    <message>
        <source>likely %1, from %2 to %3</source>
        <translation>probable le %1, du %2 au %3</translation>
    </message>
    <message>
        <source>Nothing falls due within a month.</source>
        <translation>Rien n&apos;est à échéance dans le mois.</translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n a dépassé son échéance.</numerusform>
            <numerusform>%n ont dépassé leur échéance.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fall due within a month.</source>
        <translation>
            <numerusform>%n est à échéance dans le mois.</numerusform>
            <numerusform>%n sont à échéance dans le mois.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not looked at yet.</source>
        <translation>
            <numerusform>%n n&apos;a pas encore été examiné.</numerusform>
            <numerusform>%n n&apos;ont pas encore été examinés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) are due sooner than by the catalogue alone.</source>
        <translation>
            <numerusform>%n point vient à échéance plus tôt que par le catalogue seul.</numerusform>
            <numerusform>%n points viennent à échéance plus tôt que par le catalogue seul.</numerusform>
        </translation>
    </message>
    <message>
        <source>Moved most: %1, %2.</source>
        <comment>point, 1.3 months sooner: causes</comment>
        <translation>Le plus déplacé : %1, %2.</translation>
    </message>
</context>
<context>
    <name>snugwalk::FindingModel</name>
    <message>
        <source>gone</source>
        <translation>disparu</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>mend soon, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>à réparer bientôt, %1</translation>
    </message>
    <message>
        <source>watch, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>à surveiller, %1</translation>
    </message>
    <message>
        <source>Concern %1, between %2 and %3, of 100.</source>
        <translation>Gravité %1, entre %2 et %3, sur 100.</translation>
    </message>
    <message>
        <source>may be as bad as the first of its kind</source>
        <comment>a tie</comment>
        <translation>peut être aussi grave que le premier de son genre</translation>
    </message>
</context>
<context>
    <name>snugwalk::IntakeModel</name>
    <message>
        <source>a trip</source>
        <translation>un trajet</translation>
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
        <translation>%1, écrit le %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::PaperModel</name>
    <message>
        <source>key on paper of %1</source>
        <comment>date</comment>
        <translation>clé sur papier du %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::PlotsModel</name>
    <message>
        <source>the worst of the rig</source>
        <translation>le pire du véhicule</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>picture, PNG</source>
        <comment>kind of file</comment>
        <translation>image, PNG</translation>
    </message>
    <message>
        <source>drawing, SVG</source>
        <comment>kind of file</comment>
        <translation>dessin, SVG</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>tableau, CSV</translation>
    </message>
</context>
<context>
    <name>snugwalk::PointsModel</name>
    <message numerus="yes">
        <source>%n point(s)</source>
        <comment>of a rig</comment>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n à vous</numerusform>
            <numerusform>%n à vous</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hidden</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n masqué</numerusform>
            <numerusform>%n masqués</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at an interval of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n à un intervalle à vous</numerusform>
            <numerusform>%n à un intervalle à vous</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugwalk::PositionModel</name>
    <message>
        <source>no position</source>
        <translation>sans position</translation>
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
        <translation>page web</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>tableau, CSV</translation>
    </message>
    <message>
        <source>calendar</source>
        <comment>kind of file</comment>
        <translation>calendrier</translation>
    </message>
    <message>
        <source>map data, GeoJSON</source>
        <comment>kind of file</comment>
        <translation>données de carte, GeoJSON</translation>
    </message>
    <message>
        <source>the last one</source>
        <comment>which walk</comment>
        <translation>le dernier</translation>
    </message>
    <message>
        <source>the one that suits</source>
        <comment>which earlier walk</comment>
        <translation>celui qui convient</translation>
    </message>
</context>
<context>
    <name>snugwalk::RigModel</name>
    <message>
        <source>Go on with the walk</source>
        <translation>Continuer le tour</translation>
    </message>
    <message>
        <source>Start a walk</source>
        <translation>Commencer un tour</translation>
    </message>
    <message>
        <source>every line has a mark</source>
        <translation>chaque ligne a une marque</translation>
    </message>
    <message>
        <source>at %1, %2 left</source>
        <comment>line of the walk, number of lines</comment>
        <translation>à %1, reste %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::Session</name>
    <message>
        <source>one person</source>
        <comment>who looked</comment>
        <translation>une personne</translation>
    </message>
</context>
<context>
    <name>snugwalk::SuppliesModel</name>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1, due</source>
        <comment>point</comment>
        <translation>%1, à échéance</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what for, how much</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <comment>amount</comment>
        <translation>%1 à avoir</translation>
    </message>
    <message>
        <source>%1 on hand</source>
        <comment>amount</comment>
        <translation>%1 en réserve</translation>
    </message>
    <message>
        <source>get %1</source>
        <comment>how many pieces</comment>
        <translation>prendre %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::TapeModel</name>
    <message>
        <source>at a glance</source>
        <translation>d&apos;un coup d&apos;œil</translation>
    </message>
</context>
<context>
    <name>snugwalk::TripModel</name>
    <message>
        <source>A trip</source>
        <translation>Un trajet</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>date, times</comment>
        <translation>%1, %2 à %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 à %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::WalkModel</name>
    <message>
        <source>%1 of %2 lines, %3 left</source>
        <translation>%1 lignes sur %2, reste %3</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhatIfModel</name>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>under a roof</source>
        <translation>sous un toit</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>à ciel ouvert</translation>
    </message>
    <message>
        <source>%1 driven, road: %2</source>
        <translation>%1 roulés, route : %2</translation>
    </message>
    <message>
        <source>No date moves.</source>
        <translation>Aucune date ne bouge.</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) come sooner.</source>
        <translation>
            <numerusform>%n date vient plus tôt.</numerusform>
            <numerusform>%n dates viennent plus tôt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) go later.</source>
        <translation>
            <numerusform>%n date va plus tard.</numerusform>
            <numerusform>%n dates vont plus tard.</numerusform>
        </translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>un jour plus tôt</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>un jour plus tard</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, cause</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1, as usual %2</source>
        <comment>dates</comment>
        <translation>%1, d&apos;habitude %2</translation>
    </message>
    <message>
        <source>Another leg has some of these days.</source>
        <translation>Une autre étape a certains de ces jours.</translation>
    </message>
    <message>
        <source>Change the days, or take the other leg away.</source>
        <translation>Changez les jours, ou ôtez l&apos;autre étape.</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhyModel</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>tôt %1, probable %2, tard %3</translation>
    </message>
</context>
</TS>
