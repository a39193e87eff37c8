<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AboutPage</name>
    <message>
        <source>Temperature and rain: Legates and Willmott 1989 and CRU CL 2.0 (New, Lister, Hulme, Makin 2002), as mapped by Marble; adapted. Licence: CC BY-SA 3.0.</source>
        <translation>Temperature and rain: Legates and Willmott 1989 and CRU CL 2.0 (New, Lister, Hulme, Makin 2002), as mapped by Marble; adapted. Licence: CC BY-SA 3.0.</translation>
    </message>
    <message>
        <source>Heights and sea air: ETOPO5 and COADS, NOAA, as packed with Ferret.</source>
        <translation>Heights and sea air: ETOPO5 and COADS, NOAA, as packed with Ferret.</translation>
    </message>
    <message>
        <source>Coastline: made with Natural Earth, public domain.</source>
        <translation>Coastline: made with Natural Earth, public domain.</translation>
    </message>
    <message>
        <source>The invented rig, its tracks and photos: made for this program, CC0 1.0.</source>
        <translation>The invented rig, its tracks and photos: made for this program, CC0 1.0.</translation>
    </message>
    <message>
        <source>public domain</source>
        <translation>public domain</translation>
    </message>
    <message>
        <source>About</source>
        <translation>About</translation>
    </message>
    <message>
        <source>Looks after a rig without a network: what was looked at, by whom, what was found. Nothing leaves this device unless you exchange or copy it.</source>
        <translation>Looks after a rig without a network: what was looked at, by whom, what was found. Nothing leaves this device unless you exchange or copy it.</translation>
    </message>
    <message>
        <source>Licence of the program: Apache 2.0. It comes without any warranty.</source>
        <translation>Licence of the program: Apache 2.0. It comes without any warranty.</translation>
    </message>
    <message>
        <source>Where data come from</source>
        <translation>Where data come from</translation>
    </message>
    <message>
        <source>What it is built with, under these licences</source>
        <translation>What it is built with, under these licences</translation>
    </message>
    <message>
        <source>Place names: GeoNames (geonames.org), a choice of them with rounded coordinates. Licence: CC BY 4.0, creativecommons.org/licenses/by/4.0.</source>
        <translation>Place names: GeoNames (geonames.org), a choice of them with rounded coordinates. Licence: CC BY 4.0, creativecommons.org/licenses/by/4.0.</translation>
    </message>
</context>
<context>
    <name>AcceptPage</name>
    <message>
        <source>Nothing is on hold that could be accepted. A hold for something found cannot be accepted by anyone.</source>
        <translation>Nothing is on hold that could be accepted. A hold for something found cannot be accepted by anyone.</translation>
    </message>
    <message>
        <source>One&apos;s own decision</source>
        <translation>One&apos;s own decision</translation>
    </message>
    <message>
        <source>I could not look at %1 because %2. I know that %3 may follow. I move it once, today, on my own decision.</source>
        <comment>point, reason, what may follow</comment>
        <translation>I could not look at %1 because %2. I know that %3 may follow. I move it once, today, on my own decision.</translation>
    </message>
    <message>
        <source>because</source>
        <comment>I could not look because</comment>
        <translation>because</translation>
    </message>
    <message>
        <source>what may follow</source>
        <translation>what may follow</translation>
    </message>
    <message>
        <source>Written down as decided by %1. It ends when the rig is uncoupled, after 24 hours at the latest, and stands on the slip.</source>
        <translation>Written down as decided by %1. It ends when the rig is uncoupled, after 24 hours at the latest, and stands on the slip.</translation>
    </message>
    <message>
        <source>First write in the settings who looks.</source>
        <translation>First write in the settings who looks.</translation>
    </message>
    <message>
        <source>Do not move it</source>
        <translation>Do not move it</translation>
    </message>
    <message>
        <source>I decide so</source>
        <translation>I decide so</translation>
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
        <translation>A point of your own</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>What to look at</translation>
    </message>
    <message>
        <source>How</source>
        <translation>How</translation>
    </message>
    <message>
        <source>When it passes</source>
        <translation>When it passes</translation>
    </message>
    <message>
        <source>Where one stands</source>
        <translation>Where one stands</translation>
    </message>
    <message>
        <source>Part of the rig</source>
        <translation>Part of the rig</translation>
    </message>
    <message>
        <source>What fails with it</source>
        <translation>What fails with it</translation>
    </message>
    <message>
        <source>Every how many months</source>
        <translation>Every how many months</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Every how far</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>such as 10 000 km or 6000 mi</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Add it</translation>
    </message>
    <message>
        <source>first tell what, where, what fails with it, and how often</source>
        <translation>first tell what, where, what fails with it, and how often</translation>
    </message>
</context>
<context>
    <name>AsideRow</name>
    <message>
        <source>Set aside: %1.</source>
        <comment>reason</comment>
        <translation>Set aside: %1.</translation>
    </message>
    <message>
        <source>take it over</source>
        <comment>an entry that was set aside</comment>
        <translation>take it over</translation>
    </message>
    <message>
        <source>take over: %1</source>
        <comment>entry</comment>
        <translation>take over: %1</translation>
    </message>
</context>
<context>
    <name>BeadPicture</name>
    <message>
        <source>section, to scale; the joint is %1 long</source>
        <translation>section, to scale; the joint is %1 long</translation>
    </message>
</context>
<context>
    <name>BenchField</name>
    <message>
        <source>%1, if known</source>
        <comment>a figure that may stay empty</comment>
        <translation>%1, if known</translation>
    </message>
</context>
<context>
    <name>BenchInputs</name>
    <message>
        <source>without a unit: %1</source>
        <comment>unit symbol</comment>
        <translation>without a unit: %1</translation>
    </message>
    <message>
        <source>parted by semicolons</source>
        <translation>parted by semicolons</translation>
    </message>
    <message>
        <source>written as 2026-11-24</source>
        <translation>written as 2026-11-24</translation>
    </message>
    <message>
        <source>left empty: %1</source>
        <comment>the usual figure</comment>
        <translation>left empty: %1</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <comment>heading: worked computations</comment>
        <translation>Bench</translation>
    </message>
    <message>
        <source>Numbers worked out on the spot. The maker&apos;s figure goes before any of them.</source>
        <translation>Numbers worked out on the spot. The maker&apos;s figure goes before any of them.</translation>
    </message>
    <message>
        <source>to the questions on %1</source>
        <translation>to the questions on %1</translation>
    </message>
</context>
<context>
    <name>BenchPictures</name>
    <message>
        <source>trailer&apos;s axles</source>
        <translation>trailer&apos;s axles</translation>
    </message>
    <message>
        <source>%1: coupled %2</source>
        <comment>axle, mass</comment>
        <translation>%1: coupled %2</translation>
    </message>
    <message>
        <source>%1: alone %2</source>
        <comment>axle, mass</comment>
        <translation>%1: alone %2</translation>
    </message>
    <message>
        <source>Section of the bead: %1 wide, %2 high, %3 long</source>
        <translation>Section of the bead: %1 wide, %2 high, %3 long</translation>
    </message>
    <message>
        <source>tow vehicle, front axle</source>
        <translation>tow vehicle, front axle</translation>
    </message>
    <message>
        <source>tow vehicle, rear axle</source>
        <translation>tow vehicle, rear axle</translation>
    </message>
    <message>
        <source>Tow vehicle and trailer on the scale, one pad an axle: nothing typed yet.</source>
        <translation>Tow vehicle and trailer on the scale, one pad an axle: nothing typed yet.</translation>
    </message>
</context>
<context>
    <name>BenchWords</name>
    <message>
        <source>%1 to %2, in %3 of 100 cases</source>
        <comment>a range, how sure</comment>
        <translation>%1 to %2, in %3 of 100 cases</translation>
    </message>
    <message>
        <source>It can be %1 to %2.</source>
        <comment>limits of a figure</comment>
        <translation>It can be %1 to %2.</translation>
    </message>
    <message>
        <source>It is at least %1.</source>
        <translation>It is at least %1.</translation>
    </message>
    <message>
        <source>It is at most %1.</source>
        <translation>It is at most %1.</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Check the number and its unit.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out.</source>
        <translation>Beyond what can be worked out.</translation>
    </message>
    <message>
        <source>Not a date. Write it as 2026-11-24.</source>
        <translation>Not a date. Write it as 2026-11-24.</translation>
    </message>
    <message>
        <source>Choose one of the words.</source>
        <translation>Choose one of the words.</translation>
    </message>
    <message>
        <source>Not understood. Write a whole number.</source>
        <translation>Not understood. Write a whole number.</translation>
    </message>
    <message>
        <source>Not understood. Write it as in the worked example.</source>
        <translation>Not understood. Write it as in the worked example.</translation>
    </message>
    <message>
        <source>Not understood. Write the number alone.</source>
        <translation>Not understood. Write the number alone.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>name of a figure, value</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Taken as usual: %1.</source>
        <translation>Taken as usual: %1.</translation>
    </message>
    <message>
        <source>Not understood. Write the number with its unit, %1 or another.</source>
        <translation>Not understood. Write the number with its unit, %1 or another.</translation>
    </message>
    <message>
        <source>%1. Read it again.</source>
        <comment>what does not go together</comment>
        <translation>%1. Read it again.</translation>
    </message>
    <message>
        <source>Beyond what can be worked out. Read it again.</source>
        <translation>Beyond what can be worked out. Read it again.</translation>
    </message>
    <message>
        <source>This does not go with the other figures. Read it again.</source>
        <translation>This does not go with the other figures. Read it again.</translation>
    </message>
</context>
<context>
    <name>BookRows</name>
    <message numerus="yes">
        <source>%n pass</source>
        <translation>
            <numerusform>%n pass</numerusform>
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
            <numerusform>%n could not look</numerusform>
            <numerusform>%n could not look</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not fitted</source>
        <translation>
            <numerusform>%n not fitted</numerusform>
            <numerusform>%n not fitted</numerusform>
        </translation>
    </message>
    <message>
        <source>road not known</source>
        <translation>road not known</translation>
    </message>
    <message>
        <source>smooth road</source>
        <translation>smooth road</translation>
    </message>
    <message>
        <source>broken road</source>
        <translation>broken road</translation>
    </message>
    <message>
        <source>gravel</source>
        <translation>gravel</translation>
    </message>
    <message>
        <source>washboard</source>
        <translation>washboard</translation>
    </message>
    <message>
        <source>track</source>
        <translation>track</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) not looked at</source>
        <translation>
            <numerusform>%n line not looked at</numerusform>
            <numerusform>%n lines not looked at</numerusform>
        </translation>
    </message>
    <message>
        <source>from: %1; to: %2</source>
        <comment>places</comment>
        <translation>from: %1; to: %2</translation>
    </message>
</context>
<context>
    <name>BooksBlock</name>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Logbooks (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>All files (*)</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Logbook</translation>
    </message>
    <message>
        <source>Logbooks of this device</source>
        <translation>Logbooks of this device</translation>
    </message>
    <message>
        <source>back it up: copy it with its photos</source>
        <translation>back it up: copy it with its photos</translation>
    </message>
    <message>
        <source>bring a backup back, as a logbook of its own</source>
        <translation>bring a backup back, as a logbook of its own</translation>
    </message>
    <message>
        <source>look round an invented rig</source>
        <translation>look round an invented rig</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>remove the invented rig</translation>
    </message>
    <message>
        <source>Where the copy goes</source>
        <translation>Where the copy goes</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>A backup of a logbook</translation>
    </message>
</context>
<context>
    <name>CameraPage</name>
    <message>
        <source>Photos now, marks after</source>
        <translation>Photos now, marks after</translation>
    </message>
    <message>
        <source>Photo of the finding</source>
        <translation>Photo of the finding</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>what the camera sees</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>The camera is starting …</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Take the photo</translation>
    </message>
    <message>
        <source>The last photo, faint, to stand where it was taken</source>
        <translation>The last photo, faint, to stand where it was taken</translation>
    </message>
    <message>
        <source>shown</source>
        <comment>the faint photo</comment>
        <translation>shown</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>the faint photo</comment>
        <translation>left out</translation>
    </message>
    <message>
        <source>Both hands for the ladder: take them here, or from a camera on a pole by file. Mark with both feet on the ground.</source>
        <translation>Both hands for the ladder: take them here, or from a camera on a pole by file. Mark with both feet on the ground.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Back to the finding</translation>
    </message>
    <message>
        <source>Light of the camera</source>
        <translation>Light of the camera</translation>
    </message>
    <message>
        <source>on</source>
        <comment>the light</comment>
        <translation>on</translation>
    </message>
    <message>
        <source>off</source>
        <comment>the light</comment>
        <translation>off</translation>
    </message>
</context>
<context>
    <name>CautionCard</name>
    <message>
        <source>read: go on</source>
        <comment>cautions were read</comment>
        <translation>read: go on</translation>
    </message>
    <message>
        <source>read: the next</source>
        <comment>a caution was read</comment>
        <translation>read: the next</translation>
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
        <translation>The same as words</translation>
    </message>
    <message>
        <source>copy the words</source>
        <translation>copy the words</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Two walks side by side</source>
        <translation>Two walks side by side</translation>
    </message>
    <message>
        <source>Walk round twice, on different days: then this page tells what is new, worse or mended since.</source>
        <translation>Walk round twice, on different days: then this page tells what is new, worse or mended since.</translation>
    </message>
</context>
<context>
    <name>CompareRow</name>
    <message>
        <source>%1: then %2, now %3, %4</source>
        <comment>point: state, state, change</comment>
        <translation>%1: then %2, now %3, %4</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>new</source>
        <translation>new</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>worse</translation>
    </message>
    <message>
        <source>same</source>
        <translation>same</translation>
    </message>
    <message>
        <source>better</source>
        <translation>better</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>mended</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>gone, without a mend</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>not looked at</translation>
    </message>
    <message>
        <source>first look</source>
        <translation>first look</translation>
    </message>
    <message>
        <source>no longer fitted</source>
        <translation>no longer fitted</translation>
    </message>
    <message>
        <source>%1: %2, was %3</source>
        <comment>reading, now, then</comment>
        <translation>%1: %2, was %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>defect: change</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2, against %3</source>
        <comment>kind of walk, date now, date then</comment>
        <translation>%1, %2, against %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>reading: faster than expected</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Held against: %1.</source>
        <comment>how the earlier walk was found</comment>
        <translation>Held against: %1.</translation>
    </message>
    <message>
        <source>Added to the rig since: %1.</source>
        <translation>Added to the rig since: %1.</translation>
    </message>
    <message>
        <source>Taken from the rig since: %1.</source>
        <translation>Taken from the rig since: %1.</translation>
    </message>
    <message>
        <source>Changed on the rig since: %1.</source>
        <translation>Changed on the rig since: %1.</translation>
    </message>
    <message>
        <source>No longer fitted: %1.</source>
        <translation>No longer fitted: %1.</translation>
    </message>
    <message>
        <source>Fitted since: %1.</source>
        <translation>Fitted since: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n worse</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n worse</numerusform>
            <numerusform>%n worse</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n same</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n same</numerusform>
            <numerusform>%n same</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n better</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n better</numerusform>
            <numerusform>%n better</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mended</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n mended</numerusform>
            <numerusform>%n mended</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gone, without a mend</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n gone, without a mend</numerusform>
            <numerusform>%n gone, without a mend</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not looked at</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n not looked at</numerusform>
            <numerusform>%n not looked at</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n first look</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n first look</numerusform>
            <numerusform>%n first looks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n no longer fitted</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n no longer fitted</numerusform>
            <numerusform>%n no longer fitted</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ConflictRow</name>
    <message>
        <source>shown until someone chooses</source>
        <translation>shown until someone chooses</translation>
    </message>
    <message>
        <source>Take this one</source>
        <translation>Take this one</translation>
    </message>
    <message>
        <source>Take this one: %1, %2</source>
        <comment>value, who wrote it</comment>
        <translation>Take this one: %1, %2</translation>
    </message>
</context>
<context>
    <name>ConflictsPage</name>
    <message>
        <source>What differs</source>
        <translation>What differs</translation>
    </message>
    <message>
        <source>Nothing was written differently, and nothing is set aside.</source>
        <translation>Nothing was written differently, and nothing is set aside.</translation>
    </message>
    <message>
        <source>Two people wrote without knowing of each other. The choice is written as an entry of its own; both versions stay in the record.</source>
        <translation>Two people wrote without knowing of each other. The choice is written as an entry of its own; both versions stay in the record.</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Set aside</translation>
    </message>
    <message>
        <source>These entries do not count. Take over what you have looked at and want to stand.</source>
        <translation>These entries do not count. Take over what you have looked at and want to stand.</translation>
    </message>
    <message>
        <source>These entries do not count. Only an owner can take them over.</source>
        <translation>These entries do not count. Only an owner can take them over.</translation>
    </message>
    <message>
        <source>Take over all of them</source>
        <translation>Take over all of them</translation>
    </message>
</context>
<context>
    <name>CurrentLine</name>
    <message>
        <source>all of them</source>
        <comment>points of one line</comment>
        <translation>all of them</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: state</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Pass: %1</source>
        <comment>what it takes</comment>
        <translation>Pass: %1</translation>
    </message>
</context>
<context>
    <name>DemoBand</name>
    <message>
        <source>An invented rig to look round: nothing of it is real, and none of it gets into your own logbook.</source>
        <translation>An invented rig to look round: nothing of it is real, and none of it gets into your own logbook.</translation>
    </message>
    <message>
        <source>to my own logbook</source>
        <translation>to my own logbook</translation>
    </message>
    <message>
        <source>remove the invented rig</source>
        <translation>remove the invented rig</translation>
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
        <translation>revoke</translation>
    </message>
    <message>
        <source>revoke %1</source>
        <comment>device</comment>
        <translation>revoke %1</translation>
    </message>
    <message>
        <source>Revoking cannot take back what that device has read: it keeps it. From now on it gets nothing new, and what it writes from now on is set aside for you to look at. What it wrote and has not exchanged yet is set aside too.</source>
        <translation>Revoking cannot take back what that device has read: it keeps it. From now on it gets nothing new, and what it writes from now on is set aside for you to look at. What it wrote and has not exchanged yet is set aside too.</translation>
    </message>
    <message>
        <source>Why, for the record; may stay empty</source>
        <translation>Why, for the record; may stay empty</translation>
    </message>
    <message>
        <source>Revoke %1</source>
        <comment>device</comment>
        <translation>Revoke %1</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>leave it as it is</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>Draw on the photo</source>
        <translation>Draw on the photo</translation>
    </message>
    <message>
        <source>lines are kept beside the photo, which stays as it is</source>
        <translation>lines are kept beside the photo, which stays as it is</translation>
    </message>
    <message>
        <source>No finding with a photo is open.</source>
        <translation>No finding with a photo is open.</translation>
    </message>
    <message>
        <source>Back to the finding</source>
        <translation>Back to the finding</translation>
    </message>
    <message>
        <source>This is its small picture: the photo itself is on another device.</source>
        <translation>This is its small picture: the photo itself is on another device.</translation>
    </message>
    <message>
        <source>ask for the photo in full</source>
        <translation>ask for the photo in full</translation>
    </message>
</context>
<context>
    <name>DrawTools</name>
    <message>
        <source>Now touch the rim.</source>
        <translation>Now touch the rim.</translation>
    </message>
    <message>
        <source>Touch the middle, then the rim; or drag.</source>
        <translation>Touch the middle, then the rim; or drag.</translation>
    </message>
    <message>
        <source>Now touch what it points at.</source>
        <translation>Now touch what it points at.</translation>
    </message>
    <message>
        <source>Touch the tail, then what it points at; or drag.</source>
        <translation>Touch the tail, then what it points at; or drag.</translation>
    </message>
    <message>
        <source>Now touch the other end.</source>
        <translation>Now touch the other end.</translation>
    </message>
    <message>
        <source>Touch one end, then the other; or drag.</source>
        <translation>Touch one end, then the other; or drag.</translation>
    </message>
    <message>
        <source>circle</source>
        <comment>tool</comment>
        <translation>circle</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>tool</comment>
        <translation>arrow</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>tool</comment>
        <translation>ruler</translation>
    </message>
    <message>
        <source>Length, if known; left empty it is told from the first ruler</source>
        <translation>Length, if known; left empty it is told from the first ruler</translation>
    </message>
    <message>
        <source>Known length, such as that of a tape or a rivet head</source>
        <translation>Known length, such as that of a tape or a rivet head</translation>
    </message>
    <message>
        <source>such as 120 mm or 4 3/4 in</source>
        <translation>such as 120 mm or 4 3/4 in</translation>
    </message>
    <message>
        <source>erase last</source>
        <comment>line on a photo</comment>
        <translation>erase last</translation>
    </message>
    <message>
        <source>erase all</source>
        <comment>lines on a photo</comment>
        <translation>erase all</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>undo</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>about %1</source>
        <comment>a length told by ratio</comment>
        <translation>about %1</translation>
    </message>
</context>
<context>
    <name>DrawnLines</name>
    <message>
        <source>circle</source>
        <comment>drawn on a photo</comment>
        <translation>circle</translation>
    </message>
    <message>
        <source>arrow</source>
        <comment>drawn on a photo</comment>
        <translation>arrow</translation>
    </message>
    <message>
        <source>ruler, %1</source>
        <comment>drawn on a photo, length</comment>
        <translation>ruler, %1</translation>
    </message>
    <message>
        <source>ruler</source>
        <comment>drawn on a photo</comment>
        <translation>ruler</translation>
    </message>
</context>
<context>
    <name>DueFilters</name>
    <message>
        <source>all of them</source>
        <comment>due points</comment>
        <translation>all of them</translation>
    </message>
    <message>
        <source>past due</source>
        <translation>past due</translation>
    </message>
    <message>
        <source>within a month</source>
        <translation>within a month</translation>
    </message>
    <message>
        <source>within a season</source>
        <translation>within a season</translation>
    </message>
    <message>
        <source>by date</source>
        <translation>by date</translation>
    </message>
    <message>
        <source>by concern</source>
        <translation>by concern</translation>
    </message>
    <message>
        <source>every zone</source>
        <translation>every zone</translation>
    </message>
    <message>
        <source>showing %1, %2, %3</source>
        <comment>which points, zone, order</comment>
        <translation>showing %1, %2, %3</translation>
    </message>
    <message>
        <source>%1; folds the choices away</source>
        <translation>%1; folds the choices away</translation>
    </message>
    <message>
        <source>%1; unfolds the choices</source>
        <translation>%1; unfolds the choices</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Which</translation>
    </message>
    <message>
        <source>In which order</source>
        <translation>In which order</translation>
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
        <translation>Due</translation>
    </message>
    <message>
        <source>Nothing is worked out yet: the bands come with the first walk.</source>
        <translation>Nothing is worked out yet: the bands come with the first walk.</translation>
    </message>
    <message>
        <source>what to buy for it</source>
        <translation>what to buy for it</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>what if it goes elsewhere</translation>
    </message>
    <message>
        <source>Line: early to late. Ring: likely. Heavy stroke: time to look. Faint upright: by the catalogue alone. Long upright: today.</source>
        <translation>Line: early to late. Ring: likely. Heavy stroke: time to look. Faint upright: by the catalogue alone. Long upright: today.</translation>
    </message>
    <message>
        <source>Nothing here for that choice.</source>
        <translation>Nothing here for that choice.</translation>
    </message>
    <message>
        <source>Nobody has looked at this rig yet, so everything is due at once. Begin with a first look of a quarter of an hour; dates follow from what is marked.</source>
        <translation>Nobody has looked at this rig yet, so everything is due at once. Begin with a first look of a quarter of an hour; dates follow from what is marked.</translation>
    </message>
    <message>
        <source>Begin with a first look</source>
        <translation>Begin with a first look</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>how it went</translation>
    </message>
</context>
<context>
    <name>DueRow</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>early %1, likely %2, late %3</translation>
    </message>
</context>
<context>
    <name>EmergencyCard</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>back</translation>
    </message>
</context>
<context>
    <name>ErrorLine</name>
    <message>
        <source>read</source>
        <comment>puts a message away</comment>
        <translation>read</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>Not understood: %1</source>
        <translation>Not understood: %1</translation>
    </message>
    <message>
        <source>Check what was typed, and try once more.</source>
        <translation>Check what was typed, and try once more.</translation>
    </message>
    <message>
        <source>Beyond what can be true: %1</source>
        <translation>Beyond what can be true: %1</translation>
    </message>
    <message>
        <source>Check the number and its unit.</source>
        <translation>Check the number and its unit.</translation>
    </message>
    <message>
        <source>This version cannot do that: %1</source>
        <translation>This version cannot do that: %1</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Install the newest version, or use another file.</translation>
    </message>
    <message>
        <source>Not found: %1</source>
        <translation>Not found: %1</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>It may have been moved. Choose it again.</translation>
    </message>
    <message>
        <source>Something else has it: %1</source>
        <translation>Something else has it: %1</translation>
    </message>
    <message>
        <source>Close other programs that use this logbook, then try once more.</source>
        <translation>Close other programs that use this logbook, then try once more.</translation>
    </message>
    <message>
        <source>The disk refused: %1</source>
        <translation>The disk refused: %1</translation>
    </message>
    <message>
        <source>Nothing was lost before this. See that the disk is there, has room and may be written to.</source>
        <translation>Nothing was lost before this. See that the disk is there, has room and may be written to.</translation>
    </message>
    <message>
        <source>Damaged: %1</source>
        <translation>Damaged: %1</translation>
    </message>
    <message>
        <source>Stop writing to it and open a backup.</source>
        <translation>Stop writing to it and open a backup.</translation>
    </message>
    <message>
        <source>No connection: %1</source>
        <translation>No connection: %1</translation>
    </message>
    <message>
        <source>Try once more where there is a network.</source>
        <translation>Try once more where there is a network.</translation>
    </message>
    <message>
        <source>How much it is was not understood.</source>
        <translation>How much it is was not understood.</translation>
    </message>
    <message>
        <source>Write for example 14 mm, 1/2 in or 3.</source>
        <translation>Write for example 14 mm, 1/2 in or 3.</translation>
    </message>
    <message>
        <source>A reading was not understood: %1</source>
        <translation>A reading was not understood: %1</translation>
    </message>
    <message>
        <source>Write the number with its unit, for example 380 kPa or 55 psi.</source>
        <translation>Write the number with its unit, for example 380 kPa or 55 psi.</translation>
    </message>
    <message>
        <source>It is not said what is wrong.</source>
        <translation>It is not said what is wrong.</translation>
    </message>
    <message>
        <source>Choose what it looks like.</source>
        <translation>Choose what it looks like.</translation>
    </message>
    <message>
        <source>It is not said how bad it is.</source>
        <translation>It is not said how bad it is.</translation>
    </message>
    <message>
        <source>Choose one of the five grades.</source>
        <translation>Choose one of the five grades.</translation>
    </message>
    <message>
        <source>It is not said why it could not be looked at.</source>
        <translation>It is not said why it could not be looked at.</translation>
    </message>
    <message>
        <source>Choose a reason.</source>
        <translation>Choose a reason.</translation>
    </message>
    <message>
        <source>The spot is not on this rig.</source>
        <translation>The spot is not on this rig.</translation>
    </message>
    <message>
        <source>Point at the drawing once more.</source>
        <translation>Point at the drawing once more.</translation>
    </message>
</context>
<context>
    <name>EverList</name>
    <message>
        <source>Nothing was ever found at a place.</source>
        <translation>Nothing was ever found at a place.</translation>
    </message>
    <message>
        <source>Found ever, by place: the number in the shape says how often. Its edge is dashed where nothing is open. A hand&apos;s breadth counts as one place.</source>
        <translation>Found ever, by place: the number in the shape says how often. Its edge is dashed where nothing is open. A hand&apos;s breadth counts as one place.</translation>
    </message>
</context>
<context>
    <name>EverPlaces</name>
    <message>
        <source>once, on %1</source>
        <comment>date</comment>
        <translation>once, on %1</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s), first on %1, last on %2</source>
        <comment>dates</comment>
        <translation>
            <numerusform>%n time, first on %1, last on %2</numerusform>
            <numerusform>%n times, first on %1, last on %2</numerusform>
        </translation>
    </message>
    <message>
        <source>last mend on %1</source>
        <comment>date</comment>
        <translation>last mend on %1</translation>
    </message>
    <message>
        <source>no mend written</source>
        <translation>no mend written</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>when found; when mended</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>; nothing open</source>
        <comment>at a place</comment>
        <translation>; nothing open</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s) written without a place</source>
        <translation>
            <numerusform>%n finding written without a place</numerusform>
            <numerusform>%n findings written without a place</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EverRow</name>
    <message>
        <source>place %1: %2, %3, %4</source>
        <comment>number, where, what, how often and when</comment>
        <translation>place %1: %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>ExchangeBlock</name>
    <message>
        <source>Exchanging with %1</source>
        <comment>store</comment>
        <translation>Exchanging with %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>what came and went until now stays</source>
        <translation>what came and went until now stays</translation>
    </message>
    <message>
        <source>Stopped. What came and went until then stays; exchange again to go on.</source>
        <translation>Stopped. What came and went until then stays; exchange again to go on.</translation>
    </message>
</context>
<context>
    <name>FileWord</name>
    <message>
        <source>photo from a file</source>
        <translation>photo from a file</translation>
    </message>
    <message>
        <source>Photos of the finding</source>
        <translation>Photos of the finding</translation>
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
        <translation>Nothing found is open. What was not looked at is not known.</translation>
    </message>
    <message numerus="yes">
        <source>%n open finding(s)</source>
        <comment>heading over the list</comment>
        <translation>
            <numerusform>%n open finding</numerusform>
            <numerusform>%n open findings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>finding %1: %2, %3, %4</source>
        <comment>number, what, how bad, call</comment>
        <translation>finding %1: %2, %3, %4</translation>
    </message>
</context>
<context>
    <name>FindingSheet</name>
    <message>
        <source>or</source>
        <translation>or</translation>
    </message>
    <message>
        <source>something new here</source>
        <translation>something new here</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <comment>who, where on earth</comment>
        <translation>%1, at %2</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Write down</translation>
    </message>
    <message>
        <source>first tell whether it is one of these</source>
        <translation>first tell whether it is one of these</translation>
    </message>
    <message>
        <source>first tell how bad it is now</source>
        <translation>first tell how bad it is now</translation>
    </message>
    <message>
        <source>Write down: pass</source>
        <translation>Write down: pass</translation>
    </message>
</context>
<context>
    <name>FinishPage</name>
    <message>
        <source>End of the walk</source>
        <translation>End of the walk</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Stop here</translation>
    </message>
    <message>
        <source>lines with an attention</source>
        <translation>lines with an attention</translation>
    </message>
    <message>
        <source>lines passed</source>
        <translation>lines passed</translation>
    </message>
    <message>
        <source>lines not fitted</source>
        <translation>lines not fitted</translation>
    </message>
    <message>
        <source>lines without a look</source>
        <translation>lines without a look</translation>
    </message>
    <message>
        <source>Every line got a mark. This says what was looked at, not that nothing will fail.</source>
        <translation>Every line got a mark. This says what was looked at, not that nothing will fail.</translation>
    </message>
    <message>
        <source>Not looked at; press one to go there:</source>
        <translation>Not looked at; press one to go there:</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Leave it open</translation>
    </message>
    <message>
        <source>it goes on at the same line</source>
        <translation>it goes on at the same line</translation>
    </message>
    <message>
        <source>Finish the walk</source>
        <translation>Finish the walk</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) stay without a look</source>
        <translation>
            <numerusform>%n line stays without a look</numerusform>
            <numerusform>%n lines stay without a look</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FirstLook</name>
    <message>
        <source>First look</source>
        <comment>kind of walk</comment>
        <translation>First look</translation>
    </message>
    <message>
        <source>What would do most harm if it were wrong, out of all this rig has. The rest can follow in stretches.</source>
        <translation>What would do most harm if it were wrong, out of all this rig has. The rest can follow in stretches.</translation>
    </message>
</context>
<context>
    <name>FittedBlock</name>
    <message>
        <source>A wheel was fitted</source>
        <translation>A wheel was fitted</translation>
    </message>
    <message>
        <source>Which wheel</source>
        <translation>Which wheel</translation>
    </message>
    <message>
        <source>Write down the fitting</source>
        <translation>Write down the fitting</translation>
    </message>
    <message>
        <source>its nuts come due after 10, 25 and 50 to 100 miles, until looked at</source>
        <translation>its nuts come due after 10, 25 and 50 to 100 miles, until looked at</translation>
    </message>
    <message>
        <source>its nuts come due after 16, 40 and 80 to 160 km, until looked at</source>
        <translation>its nuts come due after 16, 40 and 80 to 160 km, until looked at</translation>
    </message>
</context>
<context>
    <name>Glyph</name>
    <message>
        <source>not yet looked at</source>
        <comment>state of a point</comment>
        <translation>not yet looked at</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>state of a point</comment>
        <translation>pass</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>watch</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>mend soon</translation>
    </message>
    <message>
        <source>hold</source>
        <comment>call</comment>
        <translation>hold</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>state of a point</comment>
        <translation>could not look</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>state of a point</comment>
        <translation>not fitted</translation>
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
        <translation>How bad</translation>
    </message>
    <message>
        <source>grade %1: %2</source>
        <comment>how bad, in words</comment>
        <translation>grade %1: %2</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>No finding is open.</source>
        <translation>No finding is open.</translation>
    </message>
    <message>
        <source>mended %1</source>
        <comment>date</comment>
        <translation>mended %1</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Findings</translation>
    </message>
    <message>
        <source>One begins with attention on a line of a walk, and stays here until a mend closes it.</source>
        <translation>One begins with attention on a line of a walk, and stays here until a mend closes it.</translation>
    </message>
    <message>
        <source>first seen %1: on the map</source>
        <comment>where</comment>
        <translation>first seen %1: on the map</translation>
    </message>
</context>
<context>
    <name>HoldRow</name>
    <message>
        <source>the finding</source>
        <translation>the finding</translation>
    </message>
    <message>
        <source>move it once on one&apos;s own decision …</source>
        <translation>move it once on one&apos;s own decision …</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>a track, GPX or NMEA</source>
        <translation>a track, GPX or NMEA</translation>
    </message>
    <message>
        <source>a log of shaking, CSV</source>
        <translation>a log of shaking, CSV</translation>
    </message>
    <message>
        <source>weather, CSV or EPW</source>
        <translation>weather, CSV or EPW</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Take a file in</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>What it is</translation>
    </message>
    <message>
        <source>The road, if you know it</source>
        <translation>The road, if you know it</translation>
    </message>
    <message>
        <source>There is no trip yet: take its track in first.</source>
        <translation>There is no trip yet: take its track in first.</translation>
    </message>
    <message>
        <source>Of which trip</source>
        <translation>Of which trip</translation>
    </message>
    <message>
        <source>Where the sensor was</source>
        <translation>Where the sensor was</translation>
    </message>
    <message>
        <source>fixed to the rig</source>
        <translation>fixed to the rig</translation>
    </message>
    <message>
        <source>in the tow vehicle</source>
        <translation>in the tow vehicle</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>where a sensor was</comment>
        <translation>not known</translation>
    </message>
    <message>
        <source>A log without speeds needs the drive&apos;s track, or the trip&apos;s mean speed is taken.</source>
        <translation>A log without speeds needs the drive&apos;s track, or the trip&apos;s mean speed is taken.</translation>
    </message>
    <message>
        <source>Speeds from %1.</source>
        <comment>file name</comment>
        <translation>Speeds from %1.</translation>
    </message>
    <message>
        <source>track that tells the speed</source>
        <translation>track that tells the speed</translation>
    </message>
    <message>
        <source>Tracks (*.gpx *.nmea *.log *.txt)</source>
        <translation>Tracks (*.gpx *.nmea *.log *.txt)</translation>
    </message>
    <message>
        <source>Where it was measured, unless the file says so</source>
        <translation>Where it was measured, unless the file says so</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>somewhere else</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Latitude, longitude in degrees</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>such as -44.27, 170.10 or 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Year, for a file of a typical year</source>
        <translation>Year, for a file of a typical year</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Choose the file</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.epw)</source>
        <translation>Tables (*.csv *.txt *.epw)</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <comment>file name</comment>
        <translation>Reading %1</translation>
    </message>
    <message>
        <source>%1 read; working it out</source>
        <comment>bytes</comment>
        <translation>%1 read; working it out</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>nothing of it is written</source>
        <translation>nothing of it is written</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the file was written.</source>
        <translation>Stopped. Nothing of the file was written.</translation>
    </message>
    <message>
        <source>The reader says: %1</source>
        <comment>in English</comment>
        <translation>The reader says: %1</translation>
    </message>
    <message>
        <source>The file stays where it is; it is read on this device, and nothing is sent anywhere.</source>
        <translation>The file stays where it is; it is read on this device, and nothing is sent anywhere.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Say what is asked for above, and take it in once more.</source>
        <translation>Say what is asked for above, and take it in once more.</translation>
    </message>
    <message>
        <source>Put it right in the file, or export it once more from where it came from.</source>
        <translation>Put it right in the file, or export it once more from where it came from.</translation>
    </message>
    <message>
        <source>Check the number and its unit, or export the file in smaller parts.</source>
        <translation>Check the number and its unit, or export the file in smaller parts.</translation>
    </message>
    <message>
        <source>It is in the logbook already: nothing has to be done.</source>
        <translation>It is in the logbook already: nothing has to be done.</translation>
    </message>
    <message>
        <source>It may have been moved. Choose it again.</source>
        <translation>It may have been moved. Choose it again.</translation>
    </message>
    <message>
        <source>See that the disk is there, has room and may be read.</source>
        <translation>See that the disk is there, has room and may be read.</translation>
    </message>
    <message>
        <source>Install the newest version, or use another file.</source>
        <translation>Install the newest version, or use another file.</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>line %1</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>line %1, column %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of weather were added.</source>
        <translation>
            <numerusform>%n day of weather was added.</numerusform>
            <numerusform>%n days of weather were added.</numerusform>
        </translation>
    </message>
    <message>
        <source>From %1 to %2, at %3.</source>
        <comment>dates, place</comment>
        <translation>From %1 to %2, at %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) were left out.</source>
        <translation>
            <numerusform>%n reading was left out.</numerusform>
            <numerusform>%n readings were left out.</numerusform>
        </translation>
    </message>
    <message>
        <source>The road of the trip was measured over %1: middle %2 m/km, roughest tenth from %3 m/km on.</source>
        <comment>distance, roughness</comment>
        <translation>The road of the trip was measured over %1: middle %2 m/km, roughest tenth from %3 m/km on.</translation>
    </message>
    <message>
        <source>Nothing told the speed: the mean of the trip was taken.</source>
        <translation>Nothing told the speed: the mean of the trip was taken.</translation>
    </message>
    <message>
        <source>The sensor was not on the rig: what it felt is not what the rig felt.</source>
        <translation>The sensor was not on the rig: what it felt is not what the rig felt.</translation>
    </message>
    <message>
        <source>%1 on %2 was added.</source>
        <comment>distance, date</comment>
        <translation>%1 on %2 was added.</translation>
    </message>
    <message numerus="yes">
        <source>%n position(s) were left out.</source>
        <translation>
            <numerusform>%n position was left out.</numerusform>
            <numerusform>%n positions were left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) in it.</source>
        <translation>
            <numerusform>%n gap in it.</numerusform>
            <numerusform>%n gaps in it.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is there already.</source>
        <translation>%1 is there already.</translation>
    </message>
    <message>
        <source>Something is missing for %1.</source>
        <translation>Something is missing for %1.</translation>
    </message>
    <message>
        <source>%1 could not be taken in. Nothing was written.</source>
        <translation>%1 could not be taken in. Nothing was written.</translation>
    </message>
    <message>
        <source>%1 of %2 MB</source>
        <translation>%1 of %2 MB</translation>
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
        <translation>Take part in a rig</translation>
    </message>
    <message>
        <source>Words of the owner&apos;s device</source>
        <translation>Words of the owner&apos;s device</translation>
    </message>
    <message>
        <source>What this device asks to be; the owner decides</source>
        <translation>What this device asks to be; the owner decides</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Answer</translation>
    </message>
    <message>
        <source>Once the owner has enrolled this device and exchanged, exchange with the same store: the rig comes from there.</source>
        <translation>Once the owner has enrolled this device and exchanged, exchange with the same store: the rig comes from there.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>To the stores</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>start again</translation>
    </message>
    <message>
        <source>The owner&apos;s device shows a code under share. Read its picture by camera, or type or paste its words.</source>
        <translation>The owner&apos;s device shows a code under share. Read its picture by camera, or type or paste its words.</translation>
    </message>
    <message>
        <source>every device is lost, the words on paper are left</source>
        <translation>every device is lost, the words on paper are left</translation>
    </message>
    <message>
        <source>The owner reads the picture below, or types its words, and sees six digits too. They must be these.</source>
        <translation>The owner reads the picture below, or types its words, and sees six digits too. They must be these.</translation>
    </message>
</context>
<context>
    <name>KeepBlock</name>
    <message>
        <source>Where it was read</source>
        <translation>Where it was read</translation>
    </message>
    <message>
        <source>Keep as reading</source>
        <translation>Keep as reading</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>erase</source>
        <comment>key of the keypad</comment>
        <translation>erase</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>key of the keypad</comment>
        <translation>clear</translation>
    </message>
    <message>
        <source>next</source>
        <comment>key of the keypad</comment>
        <translation>next</translation>
    </message>
    <message>
        <source>done</source>
        <comment>key of the keypad</comment>
        <translation>done</translation>
    </message>
    <message>
        <source>take away the last figure</source>
        <translation>take away the last figure</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>decimal comma</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>decimal point</translation>
    </message>
    <message>
        <source>above or below zero</source>
        <translation>above or below zero</translation>
    </message>
    <message>
        <source>fraction bar</source>
        <translation>fraction bar</translation>
    </message>
    <message>
        <source>take away all figures</source>
        <translation>take away all figures</translation>
    </message>
    <message>
        <source>next reading</source>
        <translation>next reading</translation>
    </message>
    <message>
        <source>done with the readings</source>
        <translation>done with the readings</translation>
    </message>
    <message>
        <source>keypad for %1</source>
        <comment>what is read</comment>
        <translation>keypad for %1</translation>
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
        <translation>last time</translation>
    </message>
    <message>
        <source>at a glance</source>
        <comment>how it was looked at</comment>
        <translation>at a glance</translation>
    </message>
    <message>
        <source>measured</source>
        <comment>how it was looked at</comment>
        <translation>measured</translation>
    </message>
    <message>
        <source>looked</source>
        <comment>how it was looked at</comment>
        <translation>looked</translation>
    </message>
    <message>
        <source>pass</source>
        <comment>what a point got</comment>
        <translation>pass</translation>
    </message>
    <message>
        <source>attention</source>
        <comment>what a point got</comment>
        <translation>attention</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>what a point got</comment>
        <translation>not fitted</translation>
    </message>
    <message>
        <source>could not look</source>
        <comment>what a point got</comment>
        <translation>could not look</translation>
    </message>
    <message>
        <source>last: %1</source>
        <comment>a mark: how, what, when, who</comment>
        <translation>last: %1</translation>
    </message>
</context>
<context>
    <name>LegEntry</name>
    <message>
        <source>From, year-month-day</source>
        <translation>From, year-month-day</translation>
    </message>
    <message>
        <source>Until, the last day</source>
        <translation>Until, the last day</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Where it stands</translation>
    </message>
    <message>
        <source>somewhere else</source>
        <translation>somewhere else</translation>
    </message>
    <message>
        <source>Latitude, longitude in degrees</source>
        <translation>Latitude, longitude in degrees</translation>
    </message>
    <message>
        <source>such as -44.27, 170.10 or 44.27 S, 170.10 E</source>
        <translation>such as -44.27, 170.10 or 44.27 S, 170.10 E</translation>
    </message>
    <message>
        <source>Under what</source>
        <translation>Under what</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>in the open</translation>
    </message>
    <message>
        <source>under a roof or cover</source>
        <translation>under a roof or cover</translation>
    </message>
    <message>
        <source>Driven in that time; empty for none</source>
        <translation>Driven in that time; empty for none</translation>
    </message>
    <message>
        <source>such as 750 mi</source>
        <translation>such as 750 mi</translation>
    </message>
    <message>
        <source>such as 1200 km</source>
        <translation>such as 1200 km</translation>
    </message>
    <message>
        <source>On which road</source>
        <translation>On which road</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Work it out</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>nothing is written</translation>
    </message>
</context>
<context>
    <name>LegForm</name>
    <message>
        <source>Not a date: %1</source>
        <translation>Not a date: %1</translation>
    </message>
    <message>
        <source>Write year, month and day, such as 2027-01-15.</source>
        <translation>Write year, month and day, such as 2027-01-15.</translation>
    </message>
    <message>
        <source>Not a place on earth: %1</source>
        <translation>Not a place on earth: %1</translation>
    </message>
    <message>
        <source>Choose one, or write latitude and longitude in degrees, such as -44.27, 170.10.</source>
        <translation>Choose one, or write latitude and longitude in degrees, such as -44.27, 170.10.</translation>
    </message>
    <message>
        <source>Not understood: %1</source>
        <translation>Not understood: %1</translation>
    </message>
    <message>
        <source>Write it as 1200 km or 750 mi.</source>
        <translation>Write it as 1200 km or 750 mi.</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>It ends before it begins.</translation>
    </message>
    <message>
        <source>Give the last day there, at or after the first.</source>
        <translation>Give the last day there, at or after the first.</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>road</comment>
        <translation>not known</translation>
    </message>
    <message>
        <source>smooth</source>
        <comment>road</comment>
        <translation>smooth</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>road</comment>
        <translation>broken</translation>
    </message>
    <message>
        <source>gravel</source>
        <comment>road</comment>
        <translation>gravel</translation>
    </message>
    <message>
        <source>washboard</source>
        <comment>road</comment>
        <translation>washboard</translation>
    </message>
    <message>
        <source>track</source>
        <comment>road</comment>
        <translation>track</translation>
    </message>
</context>
<context>
    <name>LinesPage</name>
    <message>
        <source>all</source>
        <comment>lines of a walk</comment>
        <translation>all</translation>
    </message>
    <message>
        <source>left, %1</source>
        <comment>lines without a mark, how many</comment>
        <translation>left, %1</translation>
    </message>
    <message>
        <source>attention, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>attention, %1</translation>
    </message>
    <message>
        <source>pass, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>pass, %1</translation>
    </message>
    <message>
        <source>could not look, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>could not look, %1</translation>
    </message>
    <message>
        <source>not fitted, %1</source>
        <comment>lines with that mark, how many</comment>
        <translation>not fitted, %1</translation>
    </message>
    <message>
        <source>every stand</source>
        <translation>every stand</translation>
    </message>
    <message>
        <source>Search the lines</source>
        <translation>Search the lines</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>only one stand</source>
        <translation>only one stand</translation>
    </message>
    <message>
        <source>No line of this walk is like that.</source>
        <translation>No line of this walk is like that.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n line</numerusform>
            <numerusform>%n lines</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LogbookHead</name>
    <message>
        <source>Logbook</source>
        <translation>Logbook</translation>
    </message>
    <message>
        <source>exchange</source>
        <comment>with other devices</comment>
        <translation>exchange</translation>
    </message>
    <message>
        <source>exchange: %1</source>
        <comment>what waits</comment>
        <translation>exchange: %1</translation>
    </message>
    <message>
        <source>search</source>
        <translation>search</translation>
    </message>
    <message>
        <source>reports</source>
        <translation>reports</translation>
    </message>
    <message>
        <source>walks</source>
        <translation>walks</translation>
    </message>
    <message>
        <source>trips</source>
        <translation>trips</translation>
    </message>
    <message>
        <source>mends</source>
        <translation>mends</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>photos</translation>
    </message>
    <message>
        <source>how it went</source>
        <comment>weather, roads, costs over time</comment>
        <translation>how it went</translation>
    </message>
    <message>
        <source>map</source>
        <translation>map</translation>
    </message>
</context>
<context>
    <name>LogbookPage</name>
    <message>
        <source>No walk yet.</source>
        <translation>No walk yet.</translation>
    </message>
    <message>
        <source>No trip yet.</source>
        <translation>No trip yet.</translation>
    </message>
    <message>
        <source>No mend yet.</source>
        <translation>No mend yet.</translation>
    </message>
    <message>
        <source>No photo yet.</source>
        <translation>No photo yet.</translation>
    </message>
    <message>
        <source>Compare these two</source>
        <translation>Compare these two</translation>
    </message>
    <message>
        <source>Compare the last two</source>
        <translation>Compare the last two</translation>
    </message>
    <message>
        <source>or press one more</source>
        <translation>or press one more</translation>
    </message>
    <message>
        <source>or press two of them</source>
        <translation>or press two of them</translation>
    </message>
    <message>
        <source>Take a file in</source>
        <translation>Take a file in</translation>
    </message>
    <message>
        <source>a track, a log of shaking, weather</source>
        <translation>a track, a log of shaking, weather</translation>
    </message>
    <message>
        <source>take back: %1</source>
        <comment>what was written last</comment>
        <translation>take back: %1</translation>
    </message>
</context>
<context>
    <name>LookEntry</name>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, by %2</translation>
    </message>
</context>
<context>
    <name>MapChoices</name>
    <message>
        <source>a finding by its call: hold</source>
        <translation>a finding by its call: hold</translation>
    </message>
    <message>
        <source>mend soon</source>
        <comment>call</comment>
        <translation>mend soon</translation>
    </message>
    <message>
        <source>watch</source>
        <comment>call</comment>
        <translation>watch</translation>
    </message>
    <message>
        <source>a finding that is mended or gone</source>
        <translation>a finding that is mended or gone</translation>
    </message>
    <message>
        <source>a stay</source>
        <translation>a stay</translation>
    </message>
    <message>
        <source>the end of a trip</source>
        <translation>the end of a trip</translation>
    </message>
    <message>
        <source>A number says how many lie there. A broken line is a worse road. Press a line for its trip, bare land to bring it to the middle.</source>
        <translation>A number says how many lie there. A broken line is a worse road. Press a line for its trip, bare land to bring it to the middle.</translation>
    </message>
</context>
<context>
    <name>MapMembers</name>
    <message numerus="yes">
        <source>%n thing(s) here</source>
        <comment>on the map</comment>
        <translation>
            <numerusform>%n thing here</numerusform>
            <numerusform>%n things here</numerusform>
        </translation>
    </message>
    <message>
        <source>look closer</source>
        <comment>at the map</comment>
        <translation>look closer</translation>
    </message>
    <message>
        <source>close</source>
        <comment>a list on the map</comment>
        <translation>close</translation>
    </message>
</context>
<context>
    <name>MapPage</name>
    <message>
        <source>Map</source>
        <translation>Map</translation>
    </message>
    <message>
        <source>close</source>
        <comment>what is shown</comment>
        <translation>close</translation>
    </message>
    <message>
        <source>what is shown</source>
        <comment>on the map</comment>
        <translation>what is shown</translation>
    </message>
    <message>
        <source>Nothing of this rig has a place yet.</source>
        <translation>Nothing of this rig has a place yet.</translation>
    </message>
    <message>
        <source>A track from a phone or a receiver draws its trip here. A stay shows where the rig stood. A finding lies where it was looked at, if the walk was done with the position on (settings).</source>
        <translation>A track from a phone or a receiver draws its trip here. A stay shows where the rig stood. A finding lies where it was looked at, if the walk was done with the position on (settings).</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Take a track in</translation>
    </message>
    <message>
        <source>Coast: Natural Earth. Names: GeoNames, CC BY 4.0.</source>
        <translation>Coast: Natural Earth. Names: GeoNames, CC BY 4.0.</translation>
    </message>
</context>
<context>
    <name>MapPaper</name>
    <message>
        <source>nearer</source>
        <comment>map</comment>
        <translation>nearer</translation>
    </message>
    <message>
        <source>further away</source>
        <comment>map</comment>
        <translation>further away</translation>
    </message>
    <message>
        <source>all</source>
        <comment>everything on the map</comment>
        <translation>all</translation>
    </message>
    <message>
        <source>show everything</source>
        <comment>on the map</comment>
        <translation>show everything</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>A trip</source>
        <translation>A trip</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates of a stay</comment>
        <translation>%1 to %2</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date of a stay that goes on</comment>
        <translation>since %1</translation>
    </message>
    <message>
        <source>A stay</source>
        <translation>A stay</translation>
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
            <numerusform>%n thing here, first: %1</numerusform>
            <numerusform>%n things here, first: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Map, north up; its middle is %1.</source>
        <comment>where</comment>
        <translation>Map, north up; its middle is %1.</translation>
    </message>
    <message>
        <source>%1 across.</source>
        <comment>distance</comment>
        <translation>%1 across.</translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>Where the sea is is not known here.</translation>
    </message>
    <message>
        <source>findings</source>
        <comment>on the map</comment>
        <translation>findings</translation>
    </message>
    <message>
        <source>mended ones too</source>
        <comment>findings on the map</comment>
        <translation>mended ones too</translation>
    </message>
    <message>
        <source>trips</source>
        <comment>on the map</comment>
        <translation>trips</translation>
    </message>
    <message>
        <source>stays</source>
        <comment>on the map</comment>
        <translation>stays</translation>
    </message>
</context>
<context>
    <name>MarkBar</name>
    <message>
        <source>Pass</source>
        <comment>mark</comment>
        <translation>Pass</translation>
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
        <translation>Write down a mend</translation>
    </message>
    <message>
        <source>What kind of work</source>
        <translation>What kind of work</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>What was done</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Cost</translation>
    </message>
    <message>
        <source>Brakes, gas, mains and tires: by licensed people, and to the maker&apos;s figures.</source>
        <translation>Brakes, gas, mains and tires: by licensed people, and to the maker&apos;s figures.</translation>
    </message>
    <message>
        <source>Write down the mend</source>
        <translation>Write down the mend</translation>
    </message>
    <message>
        <source>first tell what kind of work</source>
        <translation>first tell what kind of work</translation>
    </message>
    <message>
        <source>With what and how many</source>
        <translation>With what and how many</translation>
    </message>
    <message>
        <source>such as lap sealant, 2 cartridges; 3 x rivet 3/16 in</source>
        <translation>such as lap sealant, 2 cartridges; 3 x rivet 3/16 in</translation>
    </message>
</context>
<context>
    <name>MoreWord</name>
    <message>
        <source>further up</source>
        <comment>turn the page without a swipe</comment>
        <translation>further up</translation>
    </message>
    <message>
        <source>further down</source>
        <comment>turn the page without a swipe</comment>
        <translation>further down</translation>
    </message>
</context>
<context>
    <name>NewFinding</name>
    <message>
        <source>first tell which of these it is</source>
        <translation>first tell which of these it is</translation>
    </message>
    <message>
        <source>first tell what it is and how bad</source>
        <translation>first tell what it is and how bad</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>of the points of a line</comment>
        <translation>Which</translation>
    </message>
    <message>
        <source>What</source>
        <translation>What</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>How much</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>such as 60 mm, or 2 of 8</translation>
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
        <translation>mended, it holds</translation>
    </message>
    <message>
        <source>there again</source>
        <translation>there again</translation>
    </message>
    <message>
        <source>still there, the same</source>
        <translation>still there, the same</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>worse</translation>
    </message>
    <message>
        <source>better</source>
        <translation>better</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>gone</translation>
    </message>
    <message>
        <source>Finding %1, mended: now</source>
        <comment>number</comment>
        <translation>Finding %1, mended: now</translation>
    </message>
    <message>
        <source>Finding %1 now</source>
        <comment>number</comment>
        <translation>Finding %1 now</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>How much</translation>
    </message>
    <message>
        <source>such as 60 mm, or 2 of 8</source>
        <translation>such as 60 mm, or 2 of 8</translation>
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
        <translation>Finding %1 since %2: %3</translation>
    </message>
    <message>
        <source>Finding %1, mended %2: %3</source>
        <comment>number, date, what</comment>
        <translation>Finding %1, mended %2: %3</translation>
    </message>
    <message>
        <source>A pass here confirms the mend.</source>
        <translation>A pass here confirms the mend.</translation>
    </message>
</context>
<context>
    <name>PageFoot</name>
    <message>
        <source>back</source>
        <comment>to where one was</comment>
        <translation>back</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>emergency</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>A key on paper</source>
        <translation>A key on paper</translation>
    </message>
    <message>
        <source>24 words that own %1 when every device is lost. They are shown once and kept nowhere: write them down, on two papers if you can.</source>
        <comment>rig</comment>
        <translation>24 words that own %1 when every device is lost. They are shown once and kept nowhere: write them down, on two papers if you can.</translation>
    </message>
    <message>
        <source>Who has the words and reaches a store owns the logbook. Keep them as you keep the papers of the rig. A paper that was lost or seen is revoked like a device.</source>
        <translation>Who has the words and reaches a store owns the logbook. Keep them as you keep the papers of the rig. A paper that was lost or seen is revoked like a device.</translation>
    </message>
    <message>
        <source>Show the words</source>
        <translation>Show the words</translation>
    </message>
    <message>
        <source>only you look at the screen now</source>
        <translation>only you look at the screen now</translation>
    </message>
    <message>
        <source>The key of %1</source>
        <comment>rig</comment>
        <translation>The key of %1</translation>
    </message>
    <message>
        <source>The mark of the rig; not secret, it tells this rig from one that somebody made up</source>
        <translation>The mark of the rig; not secret, it tells this rig from one that somebody made up</translation>
    </message>
    <message>
        <source>Exchange with a store now, so that the store knows this key.</source>
        <translation>Exchange with a store now, so that the store knows this key.</translation>
    </message>
    <message>
        <source>It is written down</source>
        <translation>It is written down</translation>
    </message>
    <message>
        <source>the words are not shown again</source>
        <translation>the words are not shown again</translation>
    </message>
</context>
<context>
    <name>PhotoBoard</name>
    <message>
        <source>photo to draw on</source>
        <translation>photo to draw on</translation>
    </message>
    <message>
        <source>photo to draw on: %1</source>
        <translation>photo to draw on: %1</translation>
    </message>
</context>
<context>
    <name>PhotoChoice</name>
    <message>
        <source>Photos: none yet</source>
        <translation>Photos: none yet</translation>
    </message>
    <message>
        <source>leave out</source>
        <comment>a photo</comment>
        <translation>leave out</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s); press one to draw on it</source>
        <translation>
            <numerusform>%n photo; press one to draw on it</numerusform>
            <numerusform>%n photos; press one to draw on it</numerusform>
        </translation>
    </message>
    <message>
        <source>number %1</source>
        <comment>photo</comment>
        <translation>number %1</translation>
    </message>
    <message>
        <source>take a photo</source>
        <translation>take a photo</translation>
    </message>
</context>
<context>
    <name>PhotoPair</name>
    <message>
        <source>then, %1</source>
        <comment>photo</comment>
        <translation>then, %1</translation>
    </message>
    <message>
        <source>then</source>
        <comment>earlier walk</comment>
        <translation>then</translation>
    </message>
    <message>
        <source>now, %1</source>
        <comment>photo</comment>
        <translation>now, %1</translation>
    </message>
    <message>
        <source>then, in its place</source>
        <translation>then, in its place</translation>
    </message>
    <message>
        <source>now; press for then</source>
        <translation>now; press for then</translation>
    </message>
    <message>
        <source>now</source>
        <comment>later walk</comment>
        <translation>now</translation>
    </message>
    <message>
        <source>shows then in the place of now</source>
        <translation>shows then in the place of now</translation>
    </message>
    <message>
        <source>now; press to see then in its place</source>
        <translation>now; press to see then in its place</translation>
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
        <translation>photo: %1</translation>
    </message>
    <message>
        <source>no photo</source>
        <translation>no photo</translation>
    </message>
    <message>
        <source>%1; opens it</source>
        <comment>photo</comment>
        <translation>%1; opens it</translation>
    </message>
</context>
<context>
    <name>PlaceBar</name>
    <message>
        <source>Rig</source>
        <comment>place: the drawing of the rig</comment>
        <translation>Rig</translation>
    </message>
    <message>
        <source>Due</source>
        <comment>place: what is due when</comment>
        <translation>Due</translation>
    </message>
    <message>
        <source>Logbook</source>
        <comment>place: walks, trips, mends</comment>
        <translation>Logbook</translation>
    </message>
    <message>
        <source>Bench</source>
        <comment>place: worked computations</comment>
        <translation>Bench</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>emergency</translation>
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
        <translation>kerb side</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>road side</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>front</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>rear</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>from above</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>underneath</translation>
    </message>
    <message>
        <source>not told yet</source>
        <translation>not told yet</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <comment>place on the rig</comment>
        <translation>Where: %1</translation>
    </message>
    <message>
        <source>touch the spot</source>
        <translation>touch the spot</translation>
    </message>
    <message>
        <source>or at a named place</source>
        <translation>or at a named place</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>from the front</translation>
    </message>
    <message>
        <source>from the centre line</source>
        <translation>from the centre line</translation>
    </message>
    <message>
        <source>up from the ground</source>
        <translation>up from the ground</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>length, from where</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <comment>from where</comment>
        <translation>measured: %1</translation>
    </message>
</context>
<context>
    <name>PlaceHost</name>
    <message>
        <source>Opening the logbook …</source>
        <translation>Opening the logbook …</translation>
    </message>
</context>
<context>
    <name>PlatePicture</name>
    <message>
        <source>picture of a placard: mass, axles, tires, pressure when cold</source>
        <translation>picture of a placard: mass, axles, tires, pressure when cold</translation>
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
        <translation>Every how many months</translation>
    </message>
    <message>
        <source>Every how far</source>
        <translation>Every how far</translation>
    </message>
    <message>
        <source>such as 10 000 km or 6000 mi</source>
        <translation>such as 10 000 km or 6000 mi</translation>
    </message>
    <message>
        <source>set this</source>
        <translation>set this</translation>
    </message>
    <message>
        <source>as the catalogue has it</source>
        <translation>as the catalogue has it</translation>
    </message>
    <message>
        <source>show it again</source>
        <translation>show it again</translation>
    </message>
    <message>
        <source>hide it</source>
        <translation>hide it</translation>
    </message>
</context>
<context>
    <name>PointWords</name>
    <message numerus="yes">
        <source>every %n month(s)</source>
        <comment>interval</comment>
        <translation>
            <numerusform>every %n month</numerusform>
            <numerusform>every %n months</numerusform>
        </translation>
    </message>
    <message>
        <source>before each move, or after what happens</source>
        <translation>before each move, or after what happens</translation>
    </message>
    <message>
        <source>every %1</source>
        <comment>distance</comment>
        <translation>every %1</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>every so many months, distance</comment>
        <translation>%1 or %2</translation>
    </message>
    <message>
        <source>hidden by %1, %2</source>
        <comment>who, date</comment>
        <translation>hidden by %1, %2</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>your own</translation>
    </message>
    <message>
        <source>the catalogue has %1</source>
        <comment>interval</comment>
        <translation>the catalogue has %1</translation>
    </message>
    <message>
        <source>it matters on the road</source>
        <translation>it matters on the road</translation>
    </message>
    <message>
        <source>fire, gas or fumes</source>
        <translation>fire, gas or fumes</translation>
    </message>
    <message>
        <source>water gets in</source>
        <translation>water gets in</translation>
    </message>
    <message>
        <source>health</source>
        <translation>health</translation>
    </message>
    <message>
        <source>someone can be hurt at camp</source>
        <translation>someone can be hurt at camp</translation>
    </message>
    <message>
        <source>comfort</source>
        <translation>comfort</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>looks only</translation>
    </message>
    <message>
        <source>every month</source>
        <comment>interval</comment>
        <translation>every month</translation>
    </message>
</context>
<context>
    <name>PointsPage</name>
    <message>
        <source>Points of this rig</source>
        <translation>Points of this rig</translation>
    </message>
    <message>
        <source>Find a point by a word</source>
        <translation>Find a point by a word</translation>
    </message>
    <message>
        <source>add a point of your own</source>
        <translation>add a point of your own</translation>
    </message>
</context>
<context>
    <name>QrPicture</name>
    <message>
        <source>The code as a picture; the words below say the same</source>
        <translation>The code as a picture; the words below say the same</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>more figures, if known</source>
        <translation>more figures, if known</translation>
    </message>
    <message>
        <source>a worked example</source>
        <translation>a worked example</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>takes away what was typed</comment>
        <translation>start again</translation>
    </message>
</context>
<context>
    <name>ReadCode</name>
    <message>
        <source>read the picture by camera</source>
        <translation>read the picture by camera</translation>
    </message>
    <message>
        <source>read it from a picture file</source>
        <translation>read it from a picture file</translation>
    </message>
    <message>
        <source>This device has no camera that can be used. Type the words, or read a picture file.</source>
        <translation>This device has no camera that can be used. Type the words, or read a picture file.</translation>
    </message>
    <message>
        <source>what the camera sees</source>
        <translation>what the camera sees</translation>
    </message>
    <message>
        <source>Hold it straight on, so that the whole picture is seen.</source>
        <translation>Hold it straight on, so that the whole picture is seen.</translation>
    </message>
    <message>
        <source>The camera is starting …</source>
        <translation>The camera is starting …</translation>
    </message>
    <message>
        <source>leave the camera</source>
        <translation>leave the camera</translation>
    </message>
    <message>
        <source>Picture of the code</source>
        <translation>Picture of the code</translation>
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
        <translation>last time %1</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <comment>quantity, unit</comment>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>reading</translation>
    </message>
    <message>
        <source>over all walks</source>
        <comment>readings</comment>
        <translation>over all walks</translation>
    </message>
</context>
<context>
    <name>Readings</name>
    <message>
        <source>%1 on %2</source>
        <comment>last reading, date</comment>
        <translation>%1 on %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>limits</comment>
        <translation>%1 to %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>at least %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>at most %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>maker&apos;s figure: not typed in</translation>
    </message>
    <message>
        <source>Not understood. Write it for example as %1.</source>
        <translation>Not understood. Write it for example as %1.</translation>
    </message>
    <message>
        <source>%1 is outside the limit (%2, %3). Consider attention.</source>
        <translation>%1 is outside the limit (%2, %3). Consider attention.</translation>
    </message>
</context>
<context>
    <name>Reason</name>
    <message>
        <source>Water gets in if it fails.</source>
        <translation>Water gets in if it fails.</translation>
    </message>
    <message>
        <source>It matters on the road.</source>
        <translation>It matters on the road.</translation>
    </message>
    <message>
        <source>Fire, gas or fumes if it fails.</source>
        <translation>Fire, gas or fumes if it fails.</translation>
    </message>
    <message>
        <source>It touches health.</source>
        <translation>It touches health.</translation>
    </message>
    <message>
        <source>Someone can be hurt at camp.</source>
        <translation>Someone can be hurt at camp.</translation>
    </message>
    <message>
        <source>It is a matter of looks.</source>
        <translation>It is a matter of looks.</translation>
    </message>
    <message>
        <source>It is a matter of comfort.</source>
        <translation>It is a matter of comfort.</translation>
    </message>
    <message>
        <source>You drive about %1 a year, by your own seasons.</source>
        <translation>You drive about %1 a year, by your own seasons.</translation>
    </message>
    <message>
        <source>Your trips so far come to about %1 a year.</source>
        <translation>Your trips so far come to about %1 a year.</translation>
    </message>
    <message>
        <source>You said about %1 a year.</source>
        <translation>You said about %1 a year.</translation>
    </message>
    <message>
        <source>You said that it does not move.</source>
        <translation>You said that it does not move.</translation>
    </message>
    <message>
        <source>Nothing is known of how much you drive: %1 a year is taken.</source>
        <translation>Nothing is known of how much you drive: %1 a year is taken.</translation>
    </message>
    <message>
        <source>Last looked at on %1.</source>
        <translation>Last looked at on %1.</translation>
    </message>
    <message>
        <source>Could not be looked at on %1.</source>
        <translation>Could not be looked at on %1.</translation>
    </message>
    <message>
        <source>Since then: %1.</source>
        <translation>Since then: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Every %n months, counted from %1.</source>
        <translation>
            <numerusform>Every month, counted from %1.</numerusform>
            <numerusform>Every %n months, counted from %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 driven since.</source>
        <translation>%1 driven since.</translation>
    </message>
    <message>
        <source>A wheel was fitted on %1; look again from %2 on.</source>
        <translation>A wheel was fitted on %1; look again from %2 on.</translation>
    </message>
    <message>
        <source>Because of: %1.</source>
        <translation>Because of: %1.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Nobody has looked at it yet.</translation>
    </message>
    <message>
        <source>A limit of zero was left out.</source>
        <translation>A limit of zero was left out.</translation>
    </message>
    <message>
        <source>Grade %1 of 5.</source>
        <translation>Grade %1 of 5.</translation>
    </message>
    <message>
        <source>The next look is taken to be %1 months away.</source>
        <translation>The next look is taken to be %1 months away.</translation>
    </message>
    <message>
        <source>The chance that it fails before then is taken as %1.</source>
        <translation>The chance that it fails before then is taken as %1.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>The worst grade on a point of the hold list.</translation>
    </message>
    <message>
        <source>It was mended; a look has to confirm it.</source>
        <translation>It was mended; a look has to confirm it.</translation>
    </message>
</context>
<context>
    <name>ReasonChips</name>
    <message>
        <source>Could not look, because</source>
        <translation>Could not look, because</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>could not look: %1</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>another reason</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>put the reasons away</comment>
        <translation>not now</translation>
    </message>
</context>
<context>
    <name>ReasonsPage</name>
    <message>
        <source>Could not look, because</source>
        <translation>Could not look, because</translation>
    </message>
    <message>
        <source>Note, if it helps</source>
        <translation>Note, if it helps</translation>
    </message>
</context>
<context>
    <name>RecoverPage</name>
    <message>
        <source>Back by the words on paper</source>
        <translation>Back by the words on paper</translation>
    </message>
    <message>
        <source>Add the store first that has the rig, on the page before this one.</source>
        <translation>Add the store first that has the rig, on the page before this one.</translation>
    </message>
    <message>
        <source>The store that has the rig</source>
        <translation>The store that has the rig</translation>
    </message>
    <message>
        <source>The 24 words</source>
        <translation>The 24 words</translation>
    </message>
    <message>
        <source>The mark, seven words beside them; may stay empty</source>
        <translation>The mark, seven words beside them; may stay empty</translation>
    </message>
    <message>
        <source>Own the rig again</source>
        <translation>Own the rig again</translation>
    </message>
    <message>
        <source>Looking at the store …</source>
        <translation>Looking at the store …</translation>
    </message>
    <message>
        <source>This device owns the rig again.</source>
        <translation>This device owns the rig again.</translation>
    </message>
    <message>
        <source>No mark was typed. Compare it with the paper before you trust what comes:</source>
        <translation>No mark was typed. Compare it with the paper before you trust what comes:</translation>
    </message>
    <message>
        <source>Mark of the rig</source>
        <translation>Mark of the rig</translation>
    </message>
    <message>
        <source>Exchange with the store now: the rig comes from there. Then revoke the devices that were lost.</source>
        <translation>Exchange with the store now: the rig comes from there. Then revoke the devices that were lost.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>To the stores</translation>
    </message>
</context>
<context>
    <name>ReportScope</name>
    <message>
        <source>The walk: %1</source>
        <translation>The walk: %1</translation>
    </message>
    <message>
        <source>Against: %1</source>
        <comment>the earlier walk</comment>
        <translation>Against: %1</translation>
    </message>
    <message>
        <source>older ones</source>
        <comment>walks</comment>
        <translation>older ones</translation>
    </message>
    <message>
        <source>Findings: all that suit</source>
        <translation>Findings: all that suit</translation>
    </message>
    <message numerus="yes">
        <source>Findings: %n chosen</source>
        <translation>
            <numerusform>Findings: %n chosen</numerusform>
            <numerusform>Findings: %n chosen</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it stands, how to get there</source>
        <translation>Where it stands, how to get there</translation>
    </message>
    <message>
        <source>Power at the place</source>
        <translation>Power at the place</translation>
    </message>
    <message>
        <source>Key, and who has it</source>
        <translation>Key, and who has it</translation>
    </message>
</context>
<context>
    <name>ReportSigners</name>
    <message>
        <source>take the signature away: %1</source>
        <comment>who signed</comment>
        <translation>take the signature away: %1</translation>
    </message>
    <message>
        <source>sign on the screen: %1</source>
        <comment>who signs</comment>
        <translation>sign on the screen: %1</translation>
    </message>
    <message>
        <source>What was signed stays as it stood. Choosing anything else here takes the signatures away.</source>
        <translation>What was signed stays as it stood. Choosing anything else here takes the signatures away.</translation>
    </message>
</context>
<context>
    <name>ReportsPage</name>
    <message>
        <source>Reports</source>
        <translation>Reports</translation>
    </message>
    <message>
        <source>What should it tell?</source>
        <translation>What should it tell?</translation>
    </message>
    <message>
        <source>another report</source>
        <translation>another report</translation>
    </message>
    <message>
        <source>Drawing the pages …</source>
        <translation>Drawing the pages …</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <comment>title of a report</comment>
        <translation>%1, page %2 of %3</translation>
    </message>
    <message>
        <source>page before</source>
        <translation>page before</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>next page</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 of %2</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Save: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Written: %1</translation>
    </message>
    <message>
        <source>Sheets of paper</source>
        <translation>Sheets of paper</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper size</comment>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation>Where it was</translation>
    </message>
    <message>
        <source>left out</source>
        <comment>of a report</comment>
        <translation>left out</translation>
    </message>
    <message>
        <source>to about 5 km</source>
        <comment>how exact a place is told</comment>
        <translation>to about 5 km</translation>
    </message>
    <message>
        <source>exact</source>
        <comment>how exact a place is told</comment>
        <translation>exact</translation>
    </message>
    <message>
        <source>What the camera wrote into photos: place, time, its number</source>
        <translation>What the camera wrote into photos: place, time, its number</translation>
    </message>
    <message>
        <source>kept, in the web page</source>
        <comment>data in photos</comment>
        <translation>kept, in the web page</translation>
    </message>
    <message>
        <source>The file lies where you put it; nothing is sent anywhere.</source>
        <translation>The file lies where you put it; nothing is sent anywhere.</translation>
    </message>
</context>
<context>
    <name>RigBoard</name>
    <message>
        <source>kerb side</source>
        <comment>face of the rig</comment>
        <translation>kerb side</translation>
    </message>
    <message>
        <source>road side</source>
        <comment>face of the rig</comment>
        <translation>road side</translation>
    </message>
    <message>
        <source>front</source>
        <comment>face of the rig</comment>
        <translation>front</translation>
    </message>
    <message>
        <source>rear</source>
        <comment>face of the rig</comment>
        <translation>rear</translation>
    </message>
    <message>
        <source>underneath</source>
        <comment>face of the rig</comment>
        <translation>underneath</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>face of the rig, how many findings</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>stand here</translation>
    </message>
    <message>
        <source>from above</source>
        <comment>face of the rig</comment>
        <translation>from above</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>from the ladder, or a camera on a pole</translation>
    </message>
</context>
<context>
    <name>RigFoot</name>
    <message>
        <source>fresh water</source>
        <translation>fresh water</translation>
    </message>
    <message>
        <source>grey water</source>
        <translation>grey water</translation>
    </message>
    <message>
        <source>black water</source>
        <translation>black water</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>gas cylinder</translation>
    </message>
    <message>
        <source>house battery</source>
        <translation>house battery</translation>
    </message>
    <message>
        <source>Dashed: where such rigs usually have them, common practice, not measured: %1.</source>
        <translation>Dashed: where such rigs usually have them, common practice, not measured: %1.</translation>
    </message>
</context>
<context>
    <name>RigForm</name>
    <message>
        <source>Not understood: %1</source>
        <translation>Not understood: %1</translation>
    </message>
    <message>
        <source>Write it for example as 6.4 m or 21 ft.</source>
        <translation>Write it for example as 6.4 m or 21 ft.</translation>
    </message>
    <message>
        <source>Choose one of the list.</source>
        <translation>Choose one of the list.</translation>
    </message>
    <message>
        <source>It has no name, or a very long one.</source>
        <translation>It has no name, or a very long one.</translation>
    </message>
    <message>
        <source>Give the rig a short name.</source>
        <translation>Give the rig a short name.</translation>
    </message>
    <message>
        <source>The axles cannot be like that.</source>
        <translation>The axles cannot be like that.</translation>
    </message>
    <message>
        <source>Give each axle&apos;s distance from the front face, foremost first, for example 3.3 m.</source>
        <translation>Give each axle&apos;s distance from the front face, foremost first, for example 3.3 m.</translation>
    </message>
    <message>
        <source>This cannot be right.</source>
        <translation>This cannot be right.</translation>
    </message>
    <message>
        <source>Check the number and its unit, for example 6.4 m or 21 ft.</source>
        <translation>Check the number and its unit, for example 6.4 m or 21 ft.</translation>
    </message>
    <message>
        <source>Write it for example as 4.5 bar or 65 psi.</source>
        <translation>Write it for example as 4.5 bar or 65 psi.</translation>
    </message>
    <message>
        <source>Write the number with its unit.</source>
        <translation>Write the number with its unit.</translation>
    </message>
    <message>
        <source>Nothing is chosen.</source>
        <translation>Nothing is chosen.</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Choose what comes nearest.</translation>
    </message>
    <message>
        <source>Choose where the rig is at home.</source>
        <translation>Choose where the rig is at home.</translation>
    </message>
    <message>
        <source>A door, window or vent would lie outside the rig.</source>
        <translation>A door, window or vent would lie outside the rig.</translation>
    </message>
    <message>
        <source>Check the length, or move it on the command line with rig set.</source>
        <translation>Check the length, or move it on the command line with rig set.</translation>
    </message>
    <message>
        <source>The placard asks for more than the sidewall allows.</source>
        <translation>The placard asks for more than the sidewall allows.</translation>
    </message>
    <message>
        <source>Read both again; a tire shop decides which tire is wrong.</source>
        <translation>Read both again; a tire shop decides which tire is wrong.</translation>
    </message>
    <message>
        <source>Check it, for example 4.5 bar or 65 psi.</source>
        <translation>Check it, for example 4.5 bar or 65 psi.</translation>
    </message>
</context>
<context>
    <name>RigHead</name>
    <message>
        <source>settings</source>
        <comment>page</comment>
        <translation>settings</translation>
    </message>
</context>
<context>
    <name>RigView</name>
    <message>
        <source>drawing of the rig</source>
        <translation>drawing of the rig</translation>
    </message>
    <message>
        <source>drawing of the rig, %1</source>
        <comment>which face</comment>
        <translation>drawing of the rig, %1</translation>
    </message>
    <message>
        <source>finding %1: %2, %3</source>
        <comment>number, what, call</comment>
        <translation>finding %1: %2, %3</translation>
    </message>
    <message>
        <source>place %1: %2, %3</source>
        <comment>number, where, how often and when</comment>
        <translation>place %1: %2, %3</translation>
    </message>
</context>
<context>
    <name>RigWords</name>
    <message>
        <source>twin-axle</source>
        <translation>twin-axle</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>axles, kind of rig</comment>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n-axle</source>
        <translation>
            <numerusform>%n-axle</numerusform>
            <numerusform>%n-axle</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 today</source>
        <comment>time</comment>
        <translation>%1 today</translation>
    </message>
    <message numerus="yes">
        <source>%n on hold: %1.</source>
        <translation>
            <numerusform>%n on hold: %1.</numerusform>
            <numerusform>%n on hold: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1.</source>
        <translation>
            <numerusform>No hold in the %n point looked at since %1.</numerusform>
            <numerusform>No hold among the %n points looked at since %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No hold among the %n points looked at since %1 by %2.</source>
        <translation>
            <numerusform>No hold in the %n point looked at since %1 by %2.</numerusform>
            <numerusform>No hold among the %n points looked at since %1 by %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be looked at: %1.</source>
        <translation>
            <numerusform>%n could not be looked at: %1.</numerusform>
            <numerusform>%n could not be looked at: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2 logged</source>
        <translation>%1; %2 logged</translation>
    </message>
    <message>
        <source>Nothing was looked at yet.</source>
        <translation>Nothing was looked at yet.</translation>
    </message>
    <message numerus="yes">
        <source>%n to mend soon.</source>
        <translation>
            <numerusform>%n to mend soon.</numerusform>
            <numerusform>%n to mend soon.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n is past due.</numerusform>
            <numerusform>%n are past due.</numerusform>
        </translation>
    </message>
    <message>
        <source>This says what was looked at, not that nothing will fail.</source>
        <translation>This says what was looked at, not that nothing will fail.</translation>
    </message>
    <message>
        <source>The worst grade on a point of the hold list.</source>
        <translation>The worst grade on a point of the hold list.</translation>
    </message>
    <message>
        <source>It is on the hold list and could not be looked at.</source>
        <translation>It is on the hold list and could not be looked at.</translation>
    </message>
    <message numerus="yes">
        <source>%n lines</source>
        <translation>
            <numerusform>%n line</numerusform>
            <numerusform>%n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n minutes</source>
        <translation>
            <numerusform>about %n minute</numerusform>
            <numerusform>about %n minutes</numerusform>
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
        <translation>%1, hidden by %2, %3</translation>
    </message>
    <message>
        <source>accepted by %1 on %2: %3</source>
        <comment>who, when, because</comment>
        <translation>accepted by %1 on %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Hidden: %1</source>
        <comment>points</comment>
        <translation>Hidden: %1</translation>
    </message>
    <message>
        <source>why</source>
        <comment>opens the grounds of the figures</comment>
        <translation>why</translation>
    </message>
    <message>
        <source>its measures and plates</source>
        <translation>its measures and plates</translation>
    </message>
    <message numerus="yes">
        <source>%n of them are jobs of a quarter of an hour and more; their time is not counted. Pass over what is not for today.</source>
        <translation>
            <numerusform>%n of them is a job of a quarter of an hour or more; its time is not counted. Pass over what is not for today.</numerusform>
            <numerusform>%n of them are jobs of a quarter of an hour and more; their time is not counted. Pass over what is not for today.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n hours</source>
        <translation>
            <numerusform>about %n hour</numerusform>
            <numerusform>about %n hours</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RigsBlock</name>
    <message>
        <source>Rig under care</source>
        <translation>Rig under care</translation>
    </message>
    <message>
        <source>put %1 away: not offered on this device, its logbook stays</source>
        <comment>rig</comment>
        <translation>put %1 away: not offered on this device, its logbook stays</translation>
    </message>
    <message>
        <source>bring back %1</source>
        <comment>rig that was put away</comment>
        <translation>bring back %1</translation>
    </message>
    <message>
        <source>set up another rig</source>
        <translation>set up another rig</translation>
    </message>
</context>
<context>
    <name>RoadLine</name>
    <message>
        <source>Roughness along the way: %1 to %2 m/km, the roughest %3 from where the log began.</source>
        <translation>Roughness along the way: %1 to %2 m/km, the roughest %3 from where the log began.</translation>
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
        <translation>finding</translation>
    </message>
    <message>
        <source>note on a walk</source>
        <translation>note on a walk</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>mend</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>walk</translation>
    </message>
    <message>
        <source>trip</source>
        <translation>trip</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>stay</translation>
    </message>
    <message>
        <source>event</source>
        <translation>event</translation>
    </message>
</context>
<context>
    <name>SearchPage</name>
    <message>
        <source>Search</source>
        <translation>Search</translation>
    </message>
    <message>
        <source>Words, or how they begin</source>
        <translation>Words, or how they begin</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Looking …</translation>
    </message>
    <message>
        <source>Findings, notes, mends, trips and points of this rig. Accents do not matter.</source>
        <translation>Findings, notes, mends, trips and points of this rig. Accents do not matter.</translation>
    </message>
    <message>
        <source>Nothing of this rig has these words.</source>
        <translation>Nothing of this rig has these words.</translation>
    </message>
</context>
<context>
    <name>SeasonRuler</name>
    <message>
        <source>the year, and where the rig will be: %1</source>
        <translation>the year, and where the rig will be: %1</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Settings</translation>
    </message>
    <message>
        <source>Who looks</source>
        <comment>name written with each mark</comment>
        <translation>Who looks</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Light</translation>
    </message>
    <message>
        <source>day</source>
        <comment>theme</comment>
        <translation>day</translation>
    </message>
    <message>
        <source>night</source>
        <comment>theme</comment>
        <translation>night</translation>
    </message>
    <message>
        <source>sun, black on white</source>
        <comment>theme</comment>
        <translation>sun, black on white</translation>
    </message>
    <message>
        <source>Hands; gloves get larger places to press</source>
        <translation>Hands; gloves get larger places to press</translation>
    </message>
    <message>
        <source>bare hands</source>
        <translation>bare hands</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>gloves</translation>
    </message>
    <message>
        <source>Size of words</source>
        <translation>Size of words</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>size of words</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Units shown; typing takes either</source>
        <translation>Units shown; typing takes either</translation>
    </message>
    <message>
        <source>metres, kilometres, kPa, °C</source>
        <translation>metres, kilometres, kPa, °C</translation>
    </message>
    <message>
        <source>feet, miles, psi, °F</source>
        <translation>feet, miles, psi, °F</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Language</translation>
    </message>
    <message>
        <source>points of this rig: add, hide, how often</source>
        <translation>points of this rig: add, hide, how often</translation>
    </message>
    <message>
        <source>exchange with other devices</source>
        <translation>exchange with other devices</translation>
    </message>
    <message>
        <source>about: version, data, licences</source>
        <translation>about: version, data, licences</translation>
    </message>
    <message>
        <source>A buzz in the hand when a mark is written</source>
        <translation>A buzz in the hand when a mark is written</translation>
    </message>
    <message>
        <source>on</source>
        <comment>setting</comment>
        <translation>on</translation>
    </message>
    <message>
        <source>off</source>
        <comment>setting</comment>
        <translation>off</translation>
    </message>
    <message>
        <source>A soft tick when a mark is written</source>
        <translation>A soft tick when a mark is written</translation>
    </message>
</context>
<context>
    <name>SetupFitted</name>
    <message>
        <source>What is usual is chosen already. It decides what the walks ask about.</source>
        <translation>What is usual is chosen already. It decides what the walks ask about.</translation>
    </message>
    <message>
        <source>Fitted to it</source>
        <translation>Fitted to it</translation>
    </message>
    <message>
        <source>more that may be fitted</source>
        <translation>more that may be fitted</translation>
    </message>
    <message>
        <source>What the roof is made of</source>
        <translation>What the roof is made of</translation>
    </message>
    <message>
        <source>May the roof carry a person?</source>
        <translation>May the roof carry a person?</translation>
    </message>
</context>
<context>
    <name>SetupForm</name>
    <message>
        <source>Your rig</source>
        <translation>Your rig</translation>
    </message>
    <message>
        <source>Another rig</source>
        <translation>Another rig</translation>
    </message>
    <message numerus="yes">
        <source>%n answer(s) to put right, told above</source>
        <translation>
            <numerusform>%n answer to put right, told above</numerusform>
            <numerusform>%n answers to put right, told above</numerusform>
        </translation>
    </message>
    <message>
        <source>Draw it</source>
        <translation>Draw it</translation>
    </message>
    <message>
        <source>or take part in a rig of another device</source>
        <translation>or take part in a rig of another device</translation>
    </message>
    <message>
        <source>kind</source>
        <comment>step of a form</comment>
        <translation>kind</translation>
    </message>
    <message>
        <source>measures</source>
        <comment>step of a form</comment>
        <translation>measures</translation>
    </message>
    <message>
        <source>fitted</source>
        <comment>step of a form</comment>
        <translation>fitted</translation>
    </message>
    <message>
        <source>plates</source>
        <comment>step of a form</comment>
        <translation>plates</translation>
    </message>
    <message>
        <source>Choose what comes nearest.</source>
        <translation>Choose what comes nearest.</translation>
    </message>
    <message>
        <source>Its sheet</source>
        <comment>of the rig</comment>
        <translation>Its sheet</translation>
    </message>
    <message>
        <source>The drawing and the points to look at are made from this: four short steps, of which two are enough to begin.</source>
        <translation>The drawing and the points to look at are made from this: four short steps, of which two are enough to begin.</translation>
    </message>
    <message>
        <source>Look round an invented rig first</source>
        <translation>Look round an invented rig first</translation>
    </message>
    <message>
        <source>two years of walks, trips and findings, all made up</source>
        <translation>two years of walks, trips and findings, all made up</translation>
    </message>
    <message>
        <source>or bring a logbook back from a backup</source>
        <translation>or bring a logbook back from a backup</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Write it down</translation>
    </message>
    <message>
        <source>the rest can wait</source>
        <translation>the rest can wait</translation>
    </message>
    <message>
        <source>Next: how big</source>
        <translation>Next: how big</translation>
    </message>
    <message>
        <source>Next: what is fitted</source>
        <translation>Next: what is fitted</translation>
    </message>
    <message>
        <source>Next: its plates</source>
        <translation>Next: its plates</translation>
    </message>
    <message>
        <source>A backup of a logbook</source>
        <translation>A backup of a logbook</translation>
    </message>
    <message>
        <source>Logbooks (*.snugwalk)</source>
        <translation>Logbooks (*.snugwalk)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>All files (*)</translation>
    </message>
</context>
<context>
    <name>SetupKind</name>
    <message>
        <source>Where is it at home? Lamps, plugs and gas follow that.</source>
        <translation>Where is it at home? Lamps, plugs and gas follow that.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <comment>kind of rig</comment>
        <translation>What is it?</translation>
    </message>
    <message>
        <source>Measures in; typing takes either</source>
        <translation>Measures in; typing takes either</translation>
    </message>
    <message>
        <source>metres, kPa, °C</source>
        <translation>metres, kPa, °C</translation>
    </message>
    <message>
        <source>feet, psi, °F</source>
        <translation>feet, psi, °F</translation>
    </message>
    <message>
        <source>Your name, written beside each mark; may stay empty</source>
        <translation>Your name, written beside each mark; may stay empty</translation>
    </message>
</context>
<context>
    <name>SetupLists</name>
    <message>
        <source>travel trailer</source>
        <comment>kind of rig</comment>
        <translation>travel trailer</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <comment>kind of rig</comment>
        <translation>fifth wheel</translation>
    </message>
    <message>
        <source>folding or pop-up trailer</source>
        <comment>kind of rig</comment>
        <translation>folding or pop-up trailer</translation>
    </message>
    <message>
        <source>teardrop</source>
        <comment>kind of rig</comment>
        <translation>teardrop</translation>
    </message>
    <message>
        <source>truck camper</source>
        <comment>kind of rig</comment>
        <translation>truck camper</translation>
    </message>
    <message>
        <source>motorhome</source>
        <comment>kind of rig</comment>
        <translation>motorhome</translation>
    </message>
    <message>
        <source>camper van</source>
        <comment>kind of rig</comment>
        <translation>camper van</translation>
    </message>
    <message>
        <source>North America</source>
        <comment>practice</comment>
        <translation>North America</translation>
    </message>
    <message>
        <source>Europe</source>
        <comment>practice</comment>
        <translation>Europe</translation>
    </message>
    <message>
        <source>Australia and New Zealand</source>
        <comment>practice</comment>
        <translation>Australia and New Zealand</translation>
    </message>
    <message>
        <source>other</source>
        <comment>practice</comment>
        <translation>other</translation>
    </message>
    <message>
        <source>no</source>
        <comment>answer</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>yes, by its maker&apos;s rating</source>
        <comment>answer</comment>
        <translation>yes, by its maker&apos;s rating</translation>
    </message>
    <message>
        <source>not known, counts as no</source>
        <comment>answer</comment>
        <translation>not known, counts as no</translation>
    </message>
    <message>
        <source>rubber or plastic membrane</source>
        <comment>roof</comment>
        <translation>rubber or plastic membrane</translation>
    </message>
    <message>
        <source>moulded in one piece</source>
        <comment>roof</comment>
        <translation>moulded in one piece</translation>
    </message>
    <message>
        <source>metal sheet</source>
        <comment>roof</comment>
        <translation>metal sheet</translation>
    </message>
    <message>
        <source>canvas</source>
        <comment>roof</comment>
        <translation>canvas</translation>
    </message>
</context>
<context>
    <name>SetupMeasures</name>
    <message>
        <source>Width of the body</source>
        <translation>Width of the body</translation>
    </message>
    <message>
        <source>Height of the body, floor to roof</source>
        <translation>Height of the body, floor to roof</translation>
    </message>
    <message>
        <source>Floor above the ground</source>
        <translation>Floor above the ground</translation>
    </message>
    <message>
        <source>Coupling to the front of the body</source>
        <translation>Coupling to the front of the body</translation>
    </message>
    <message>
        <source>left empty: %1, as is usual</source>
        <comment>a measure</comment>
        <translation>left empty: %1, as is usual</translation>
    </message>
    <message>
        <source>What is left empty is drawn as such rigs usually are. Measure when there is time: all of it can be put right later.</source>
        <translation>What is left empty is drawn as such rigs usually are. Measure when there is time: all of it can be put right later.</translation>
    </message>
    <message>
        <source>Name</source>
        <comment>of the rig</comment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Length of the body, without the drawbar</source>
        <translation>Length of the body, without the drawbar</translation>
    </message>
    <message>
        <source>such as 21 ft 6 in or 6.55 m</source>
        <translation>such as 21 ft 6 in or 6.55 m</translation>
    </message>
    <message>
        <source>such as 6.4 m or 21 ft</source>
        <translation>such as 6.4 m or 21 ft</translation>
    </message>
    <message>
        <source>Axles</source>
        <translation>Axles</translation>
    </message>
    <message>
        <source>more measures: width, height, floor, axles</source>
        <translation>more measures: width, height, floor, axles</translation>
    </message>
    <message>
        <source>Axles, each aft of the front of the body</source>
        <translation>Axles, each aft of the front of the body</translation>
    </message>
</context>
<context>
    <name>SetupPlates</name>
    <message>
        <source>such as 65 psi or 4.5 bar</source>
        <translation>such as 65 psi or 4.5 bar</translation>
    </message>
    <message>
        <source>such as 450 kPa, 4.5 bar or 65 psi</source>
        <translation>such as 450 kPa, 4.5 bar or 65 psi</translation>
    </message>
    <message>
        <source>such as 7,500 lb or 3400 kg</source>
        <translation>such as 7,500 lb or 3400 kg</translation>
    </message>
    <message>
        <source>such as 2500 kg or 5,500 lb</source>
        <translation>such as 2500 kg or 5,500 lb</translation>
    </message>
    <message>
        <source>1: pressure, cold, by the placard</source>
        <translation>1: pressure, cold, by the placard</translation>
    </message>
    <message>
        <source>2: largest mass of the loaded rig</source>
        <translation>2: largest mass of the loaded rig</translation>
    </message>
    <message>
        <source>1: size, as it stands</source>
        <translation>1: size, as it stands</translation>
    </message>
    <message>
        <source>such as 205/75 R14 105</source>
        <translation>such as 205/75 R14 105</translation>
    </message>
    <message>
        <source>1: load range, a letter</source>
        <translation>1: load range, a letter</translation>
    </message>
    <message>
        <source>such as D; many tires have none</source>
        <translation>such as D; many tires have none</translation>
    </message>
    <message>
        <source>2: largest load, single</source>
        <translation>2: largest load, single</translation>
    </message>
    <message>
        <source>such as 2,040 lb</source>
        <translation>such as 2,040 lb</translation>
    </message>
    <message>
        <source>such as 925 kg</source>
        <translation>such as 925 kg</translation>
    </message>
    <message>
        <source>2: at this pressure, cold</source>
        <translation>2: at this pressure, cold</translation>
    </message>
    <message>
        <source>The placard</source>
        <translation>The placard</translation>
    </message>
    <message>
        <source>A plate or a sticker on the body: often near the front of the road side, in a door frame or a locker.</source>
        <translation>A plate or a sticker on the body: often near the front of the road side, in a door frame or a locker.</translation>
    </message>
    <message>
        <source>The tire&apos;s sidewall</source>
        <translation>The tire&apos;s sidewall</translation>
    </message>
    <message>
        <source>3: the date code: the last four figures, week and year. 2326 is week 23 of 2026. The walk asks for it on each wheel.</source>
        <translation>3: the date code: the last four figures, week and year. 2326 is week 23 of 2026. The walk asks for it on each wheel.</translation>
    </message>
    <message>
        <source>The wheel</source>
        <translation>The wheel</translation>
    </message>
    <message>
        <source>Torque of the wheel nuts, by the maker</source>
        <translation>Torque of the wheel nuts, by the maker</translation>
    </message>
    <message>
        <source>such as 100 lb·ft</source>
        <translation>such as 100 lb·ft</translation>
    </message>
    <message>
        <source>such as 120 N·m</source>
        <translation>such as 120 N·m</translation>
    </message>
    <message>
        <source>Only what stands on the rig counts as its maker&apos;s figure. Leave empty what you have not read; it can be added later.</source>
        <translation>Only what stands on the rig counts as its maker&apos;s figure. Leave empty what you have not read; it can be added later.</translation>
    </message>
</context>
<context>
    <name>SharePage</name>
    <message>
        <source>Share %1</source>
        <comment>rig</comment>
        <translation>Share %1</translation>
    </message>
    <message>
        <source>From then on what is written about this rig goes to every store you exchange with: signed by the device, and sealed so that only enrolled devices read it.</source>
        <translation>From then on what is written about this rig goes to every store you exchange with: signed by the device, and sealed so that only enrolled devices read it.</translation>
    </message>
    <message>
        <source>What the other device may do</source>
        <translation>What the other device may do</translation>
    </message>
    <message>
        <source>Until, a date such as 2027-03-31; may stay empty</source>
        <translation>Until, a date such as 2027-03-31; may stay empty</translation>
    </message>
    <message>
        <source>A hint to that device only. What ends its access is revoking it.</source>
        <translation>A hint to that device only. What ends its access is revoking it.</translation>
    </message>
    <message>
        <source>Show the code</source>
        <translation>Show the code</translation>
    </message>
    <message>
        <source>Stands until %1.</source>
        <comment>time</comment>
        <translation>Stands until %1.</translation>
    </message>
    <message>
        <source>Take the answer</source>
        <translation>Take the answer</translation>
    </message>
    <message>
        <source>Other digits there: somebody stands between. Then enroll nobody, and start again.</source>
        <translation>Other digits there: somebody stands between. Then enroll nobody, and start again.</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Device</translation>
    </message>
    <message>
        <source>Asks to be</source>
        <translation>Asks to be</translation>
    </message>
    <message>
        <source>Will be</source>
        <translation>Will be</translation>
    </message>
    <message>
        <source>The same digits: enroll it</source>
        <translation>The same digits: enroll it</translation>
    </message>
    <message>
        <source>%1 is enrolled as %2.</source>
        <comment>device, role</comment>
        <translation>%1 is enrolled as %2.</translation>
    </message>
    <message>
        <source>Exchange with a store now. The other device then finds the rig at the same store.</source>
        <translation>Exchange with a store now. The other device then finds the rig at the same store.</translation>
    </message>
    <message>
        <source>To the stores</source>
        <translation>To the stores</translation>
    </message>
    <message>
        <source>start again</source>
        <comment>with another code</comment>
        <translation>start again</translation>
    </message>
    <message>
        <source>Show it to nobody but the person who gets it. On the other device: exchange, take part in a rig. There, read the picture by camera, or type or paste the words.</source>
        <translation>Show it to nobody but the person who gets it. On the other device: exchange, take part in a rig. There, read the picture by camera, or type or paste the words.</translation>
    </message>
    <message>
        <source>What the other device shows now, as words</source>
        <translation>What the other device shows now, as words</translation>
    </message>
</context>
<context>
    <name>Shift</name>
    <message>
        <source>%1 months</source>
        <comment>with one decimal</comment>
        <translation>%1 months</translation>
    </message>
    <message>
        <source>%1 sooner</source>
        <comment>months</comment>
        <translation>%1 sooner</translation>
    </message>
    <message>
        <source>%1 later</source>
        <comment>months</comment>
        <translation>%1 later</translation>
    </message>
    <message>
        <source>shaking on the road</source>
        <translation>shaking on the road</translation>
    </message>
    <message>
        <source>how far you drive</source>
        <translation>how far you drive</translation>
    </message>
    <message>
        <source>earlier looks and mends</source>
        <translation>earlier looks and mends</translation>
    </message>
    <message>
        <source>a limit that nothing may lengthen</source>
        <translation>a limit that nothing may lengthen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, causes</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>The %n day(s) since %1 aged it like %2.</source>
        <translation>
            <numerusform>The %n day since %1 aged it like %2.</numerusform>
            <numerusform>The %n days since %1 aged it like %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SignPad</name>
    <message>
        <source>sign here: %1</source>
        <comment>who signs</comment>
        <translation>sign here: %1</translation>
    </message>
    <message>
        <source>Signed</source>
        <comment>end of signing</comment>
        <translation>Signed</translation>
    </message>
    <message>
        <source>begin again</source>
        <comment>signing</comment>
        <translation>begin again</translation>
    </message>
    <message>
        <source>not now</source>
        <comment>signing</comment>
        <translation>not now</translation>
    </message>
</context>
<context>
    <name>SixDigits</name>
    <message>
        <source>Six digits, on both devices</source>
        <translation>Six digits, on both devices</translation>
    </message>
    <message>
        <source>Six digits: %1</source>
        <comment>code of a meeting</comment>
        <translation>Six digits: %1</translation>
    </message>
</context>
<context>
    <name>StandDrawing</name>
    <message>
        <source>stand inside, here</source>
        <translation>stand inside, here</translation>
    </message>
    <message>
        <source>from the ladder, or a camera on a pole</source>
        <translation>from the ladder, or a camera on a pole</translation>
    </message>
    <message>
        <source>look from the edges</source>
        <translation>look from the edges</translation>
    </message>
    <message>
        <source>stand here</source>
        <translation>stand here</translation>
    </message>
</context>
<context>
    <name>StarPicture</name>
    <message>
        <source>All rounds are through.</source>
        <translation>All rounds are through.</translation>
    </message>
    <message>
        <source>Last round, wheel on the ground: to the maker&apos;s figure</source>
        <translation>Last round, wheel on the ground: to the maker&apos;s figure</translation>
    </message>
    <message>
        <source>Second round, wheel on the ground: to about two thirds</source>
        <translation>Second round, wheel on the ground: to about two thirds</translation>
    </message>
    <message>
        <source>First round, wheel off the ground: to about a third of the maker&apos;s figure</source>
        <translation>First round, wheel off the ground: to about a third of the maker&apos;s figure</translation>
    </message>
    <message>
        <source>nut %1, %2 of %3</source>
        <comment>which nut, how many</comment>
        <translation>nut %1, %2 of %3</translation>
    </message>
    <message>
        <source>%1; press for the next</source>
        <comment>nut 4, 2 of 6</comment>
        <translation>%1; press for the next</translation>
    </message>
    <message>
        <source>done</source>
        <comment>all nuts of a wheel</comment>
        <translation>done</translation>
    </message>
    <message>
        <source>Filled: the next nut. Heavy line: to the one after. Double ring: through in this round. Numbered clockwise from the top.</source>
        <translation>Filled: the next nut. Heavy line: to the one after. Double ring: through in this round. Numbered clockwise from the top.</translation>
    </message>
    <message>
        <source>Begin again</source>
        <comment>with the first nut</comment>
        <translation>Begin again</translation>
    </message>
    <message>
        <source>Tightened: the next</source>
        <comment>a nut</comment>
        <translation>Tightened: the next</translation>
    </message>
    <message>
        <source>one nut back</source>
        <translation>one nut back</translation>
    </message>
</context>
<context>
    <name>StartSheet</name>
    <message>
        <source>Start a walk</source>
        <translation>Start a walk</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>kind of walk, what it is for</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>most likely the one for today</source>
        <translation>most likely the one for today</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <comment>of a walk</comment>
        <translation>
            <numerusform>%n line</numerusform>
            <numerusform>%n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n minute(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, about %n minute</numerusform>
            <numerusform>, about %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, about %n hour(s)</source>
        <comment>a walk takes</comment>
        <translation>
            <numerusform>, about %n hour</numerusform>
            <numerusform>, about %n hours</numerusform>
        </translation>
    </message>
    <message>
        <source>all of it</source>
        <comment>time for a walk</comment>
        <translation>all of it</translation>
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
        <translation>Time there is</translation>
    </message>
</context>
<context>
    <name>StateFigures</name>
    <message>
        <source>under %1 %</source>
        <comment>chance</comment>
        <translation>under %1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>chance or share</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Nothing was found there at the last look.</source>
        <translation>Nothing was found there at the last look.</translation>
    </message>
    <message>
        <source>Nobody has looked at it yet.</source>
        <translation>Nobody has looked at it yet.</translation>
    </message>
    <message>
        <source>The chance of a defect at the next look is taken as %1, between %2 and %3.</source>
        <translation>The chance of a defect at the next look is taken as %1, between %2 and %3.</translation>
    </message>
    <message>
        <source>The scale: 50 is a chance of 1 in 100 of the worst kind of harm before the next look; 25 more is ten times as much.</source>
        <translation>The scale: 50 is a chance of 1 in 100 of the worst kind of harm before the next look; 25 more is ten times as much.</translation>
    </message>
    <message>
        <source>%1: %2, between %3 and %4</source>
        <comment>point, concern</comment>
        <translation>%1: %2, between %3 and %4</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more may be as bad</source>
        <translation>
            <numerusform>%1; %n more may be as bad</numerusform>
            <numerusform>%1; %n more may be as bad</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tied with %2 more</source>
        <comment>concern, number</comment>
        <translation>%1, tied with %2 more</translation>
    </message>
    <message>
        <source>Worst item, concern 0 to 100</source>
        <translation>Worst item, concern 0 to 100</translation>
    </message>
    <message>
        <source>%1, between %2 and %3</source>
        <comment>chance</comment>
        <translation>%1, between %2 and %3</translation>
    </message>
    <message>
        <source>Chance that one serious item fails before its next look</source>
        <translation>Chance that one serious item fails before its next look</translation>
    </message>
    <message numerus="yes">
        <source>Of %n item(s) on which life, limb or the rig hangs.</source>
        <translation>
            <numerusform>Of %n item on which life, limb or the rig hangs.</numerusform>
            <numerusform>Of %n items on which life, limb or the rig hangs.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each counts with its own chance, as if none knew of another; this is the chance that at least one of them fails.</source>
        <translation>Each counts with its own chance, as if none knew of another; this is the chance that at least one of them fails.</translation>
    </message>
    <message>
        <source>What nobody has looked at counts with the chance of a rig about which nothing is known.</source>
        <translation>What nobody has looked at counts with the chance of a rig about which nothing is known.</translation>
    </message>
    <message>
        <source>Looked at, by weight</source>
        <translation>Looked at, by weight</translation>
    </message>
    <message>
        <source>%1 of what weighs</source>
        <comment>share</comment>
        <translation>%1 of what weighs</translation>
    </message>
    <message>
        <source>A point weighs what hangs on it times how likely it would be at fault if nobody ever looked.</source>
        <translation>A point weighs what hangs on it times how likely it would be at fault if nobody ever looked.</translation>
    </message>
    <message>
        <source>A look counts until the point is due again.</source>
        <translation>A look counts until the point is due again.</translation>
    </message>
    <message>
        <source>over %1 %</source>
        <comment>chance</comment>
        <translation>over %1 %</translation>
    </message>
</context>
<context>
    <name>StatePage</name>
    <message>
        <source>How it stands, and why</source>
        <translation>How it stands, and why</translation>
    </message>
    <message>
        <source>Hidden, though the road or fire hangs on it</source>
        <translation>Hidden, though the road or fire hangs on it</translation>
    </message>
</context>
<context>
    <name>StoreForm</name>
    <message>
        <source>Its folder</source>
        <translation>Its folder</translation>
    </message>
    <message>
        <source>The file, with its folder</source>
        <translation>The file, with its folder</translation>
    </message>
    <message>
        <source>Address, https://…</source>
        <translation>Address, https://…</translation>
    </message>
    <message>
        <source>What devices meet at</source>
        <translation>What devices meet at</translation>
    </message>
    <message>
        <source>a folder, stick or drive</source>
        <translation>a folder, stick or drive</translation>
    </message>
    <message>
        <source>a file to hand over</source>
        <translation>a file to hand over</translation>
    </message>
    <message>
        <source>a WebDAV address</source>
        <translation>a WebDAV address</translation>
    </message>
    <message>
        <source>Name of the store</source>
        <translation>Name of the store</translation>
    </message>
    <message>
        <source>letters, digits and hyphens, such as red-stick</source>
        <translation>letters, digits and hyphens, such as red-stick</translation>
    </message>
    <message>
        <source>choose the folder</source>
        <translation>choose the folder</translation>
    </message>
    <message>
        <source>User, if it asks for one</source>
        <translation>User, if it asks for one</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Password</translation>
    </message>
    <message>
        <source>Kept on this device, for this user of it alone; not locked.</source>
        <translation>Kept on this device, for this user of it alone; not locked.</translation>
    </message>
    <message>
        <source>Add the store</source>
        <translation>Add the store</translation>
    </message>
    <message>
        <source>leave it</source>
        <comment>adds no store</comment>
        <translation>leave it</translation>
    </message>
    <message>
        <source>Folder of the store</source>
        <translation>Folder of the store</translation>
    </message>
    <message>
        <source>Certificate file of its authority; may stay empty</source>
        <translation>Certificate file of its authority; may stay empty</translation>
    </message>
    <message>
        <source>Only for a server of your own whose certificate this device does not know. Then no other authority is believed for it.</source>
        <translation>Only for a server of your own whose certificate this device does not know. Then no other authority is believed for it.</translation>
    </message>
    <message>
        <source>choose the certificate file</source>
        <translation>choose the certificate file</translation>
    </message>
    <message>
        <source>Certificate of the authority</source>
        <translation>Certificate of the authority</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt)</source>
        <translation>Certificates (*.pem *.crt)</translation>
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
        <translation>Exchange now</translation>
    </message>
    <message>
        <source>Exchange now with %1</source>
        <comment>store</comment>
        <translation>Exchange now with %1</translation>
    </message>
    <message>
        <source>remove</source>
        <comment>a store from the list</comment>
        <translation>remove</translation>
    </message>
    <message>
        <source>remove %1 from the list; what lies there stays</source>
        <comment>store</comment>
        <translation>remove %1 from the list; what lies there stays</translation>
    </message>
</context>
<context>
    <name>SuppliesPage</name>
    <message>
        <source>open findings and what is due</source>
        <translation>open findings and what is due</translation>
    </message>
    <message numerus="yes">
        <source>and what falls due in %n day(s)</source>
        <translation>
            <numerusform>and what falls due in %n day</numerusform>
            <numerusform>and what falls due in %n days</numerusform>
        </translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>To buy</translation>
    </message>
    <message>
        <source>Nothing found or due uses anything up.</source>
        <translation>Nothing found or due uses anything up.</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>On hand</translation>
    </message>
    <message>
        <source>count it</source>
        <comment>what is on hand</comment>
        <translation>count it</translation>
    </message>
</context>
<context>
    <name>Sync</name>
    <message>
        <source>writes everything, enrolls and revokes devices</source>
        <translation>writes everything, enrolls and revokes devices</translation>
    </message>
    <message>
        <source>walks, marks and mends; decides no acceptance and no points</source>
        <translation>walks, marks and mends; decides no acceptance and no points</translation>
    </message>
    <message>
        <source>walks, reports and mends; licensed work only with a certificate number</source>
        <translation>walks, reports and mends; licensed work only with a certificate number</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>reads everything, writes nothing</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of the store are damaged and were left out.</source>
        <translation>
            <numerusform>%n file of the store is damaged and was left out.</numerusform>
            <numerusform>%n files of the store are damaged and were left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) are known to be missing: another device still has to bring them.</source>
        <translation>
            <numerusform>%n file is known to be missing: another device still has to bring it.</numerusform>
            <numerusform>%n files are known to be missing: another device still has to bring them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) cannot be opened here yet: they are kept.</source>
        <translation>
            <numerusform>%n file cannot be opened here yet: it is kept.</numerusform>
            <numerusform>%n files cannot be opened here yet: they are kept.</numerusform>
        </translation>
    </message>
    <message>
        <source>A copy of this logbook went on elsewhere: both ways are kept.</source>
        <translation>A copy of this logbook went on elsewhere: both ways are kept.</translation>
    </message>
    <message>
        <source>owner</source>
        <comment>role of a device</comment>
        <translation>owner</translation>
    </message>
    <message>
        <source>helper</source>
        <comment>role of a device</comment>
        <translation>helper</translation>
    </message>
    <message>
        <source>technician</source>
        <comment>role of a device</comment>
        <translation>technician</translation>
    </message>
    <message>
        <source>viewer</source>
        <comment>role of a device</comment>
        <translation>viewer</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait to be sent.</source>
        <translation>
            <numerusform>%n entry waits to be sent.</numerusform>
            <numerusform>%n entries wait to be sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) are still on another device.</source>
        <translation>
            <numerusform>%n photo is still on another device.</numerusform>
            <numerusform>%n photos are still on another device.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) were written differently by two people.</source>
        <translation>
            <numerusform>%n thing was written differently by two people.</numerusform>
            <numerusform>%n things were written differently by two people.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) were set aside.</source>
        <translation>
            <numerusform>%n entry was set aside.</numerusform>
            <numerusform>%n entries were set aside.</numerusform>
        </translation>
    </message>
    <message>
        <source>A rig shared with this device has not arrived yet: exchange with a store that has it.</source>
        <translation>A rig shared with this device has not arrived yet: exchange with a store that has it.</translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s)</source>
        <comment>mark beside the word Logbook</comment>
        <translation>
            <numerusform>%n waits</numerusform>
            <numerusform>%n wait</numerusform>
        </translation>
    </message>
    <message>
        <source>a rig waits</source>
        <comment>mark beside the word Logbook</comment>
        <translation>a rig waits</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) sent</source>
        <translation>
            <numerusform>%n entry sent</numerusform>
            <numerusform>%n entries sent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n received</source>
        <comment>entries</comment>
        <translation>
            <numerusform>%n received</numerusform>
            <numerusform>%n received</numerusform>
        </translation>
    </message>
    <message>
        <source>Both have the same entries.</source>
        <translation>Both have the same entries.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>entries sent, received</comment>
        <translation>%1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) sent.</source>
        <translation>
            <numerusform>%n photo sent.</numerusform>
            <numerusform>%n photos sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) received.</source>
        <translation>
            <numerusform>%n photo received.</numerusform>
            <numerusform>%n photos received.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n small picture(s) of photos received.</source>
        <translation>
            <numerusform>%n small picture of a photo received.</numerusform>
            <numerusform>%n small pictures of photos received.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) of other devices were carried on.</source>
        <translation>
            <numerusform>%n file of other devices was carried on.</numerusform>
            <numerusform>%n files of other devices were carried on.</numerusform>
        </translation>
    </message>
    <message>
        <source>looking at the store …</source>
        <translation>looking at the store …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>done, all</comment>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <source>photos: %1</source>
        <comment>done of all</comment>
        <translation>photos: %1</translation>
    </message>
    <message>
        <source>files of entries: %1</source>
        <comment>done of all</comment>
        <translation>files of entries: %1</translation>
    </message>
    <message>
        <source>records of devices: %1</source>
        <comment>done of all</comment>
        <translation>records of devices: %1</translation>
    </message>
    <message>
        <source>last exchange %1</source>
        <comment>date and time</comment>
        <translation>last exchange %1</translation>
    </message>
    <message>
        <source>no exchange yet</source>
        <translation>no exchange yet</translation>
    </message>
    <message>
        <source>nothing new since</source>
        <translation>nothing new since</translation>
    </message>
    <message numerus="yes">
        <source>%n new entry(ies) since</source>
        <translation>
            <numerusform>%n new entry since</numerusform>
            <numerusform>%n new entries since</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) to leave there</source>
        <translation>
            <numerusform>%n entry to leave there</numerusform>
            <numerusform>%n entries to leave there</numerusform>
        </translation>
    </message>
    <message>
        <source>folder</source>
        <comment>kind of store</comment>
        <translation>folder</translation>
    </message>
    <message>
        <source>WebDAV address</source>
        <comment>kind of store</comment>
        <translation>WebDAV address</translation>
    </message>
    <message>
        <source>file to hand over</source>
        <comment>kind of store</comment>
        <translation>file to hand over</translation>
    </message>
    <message>
        <source>%1 (this device)</source>
        <comment>name of a device</comment>
        <translation>%1 (this device)</translation>
    </message>
    <message>
        <source>revoked</source>
        <comment>a device</comment>
        <translation>revoked</translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>date</comment>
        <translation>since %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <comment>date</comment>
        <translation>until %1</translation>
    </message>
    <message>
        <source>This rig&apos;s logbook is on this device only.</source>
        <translation>This rig&apos;s logbook is on this device only.</translation>
    </message>
    <message>
        <source>This device was revoked: what is written here stays here.</source>
        <translation>This device was revoked: what is written here stays here.</translation>
    </message>
    <message>
        <source>This device waits to be enrolled by an owner.</source>
        <translation>This device waits to be enrolled by an owner.</translation>
    </message>
    <message>
        <source>This device is enrolled as %1.</source>
        <comment>role</comment>
        <translation>This device is enrolled as %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n original(s) come with the next exchange with a store that has them.</source>
        <translation>
            <numerusform>%n original comes with the next exchange with a store that has it.</numerusform>
            <numerusform>%n originals come with the next exchange with a store that has them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SyncFault</name>
    <message>
        <source>The store is not there: %1</source>
        <translation>The store is not there: %1</translation>
    </message>
    <message>
        <source>Put the stick in, or connect the drive, and exchange once more.</source>
        <translation>Put the stick in, or connect the drive, and exchange once more.</translation>
    </message>
    <message>
        <source>The store holds another file of that name: %1</source>
        <translation>The store holds another file of that name: %1</translation>
    </message>
    <message>
        <source>Nothing was overwritten. Look at the store, or use another one.</source>
        <translation>Nothing was overwritten. Look at the store, or use another one.</translation>
    </message>
    <message>
        <source>The store cannot be reached: %1</source>
        <translation>The store cannot be reached: %1</translation>
    </message>
    <message>
        <source>Nothing is lost. Exchange again where there is a network.</source>
        <translation>Nothing is lost. Exchange again where there is a network.</translation>
    </message>
    <message>
        <source>The store or the disk refused: %1</source>
        <translation>The store or the disk refused: %1</translation>
    </message>
    <message>
        <source>Nothing is lost. See that it is there, has room and may be written to, then exchange again.</source>
        <translation>Nothing is lost. See that it is there, has room and may be written to, then exchange again.</translation>
    </message>
    <message>
        <source>A word is not as it was shown: %1</source>
        <translation>A word is not as it was shown: %1</translation>
    </message>
    <message>
        <source>Look at this word again.</source>
        <translation>Look at this word again.</translation>
    </message>
    <message>
        <source>Words are missing, or are of two sets.</source>
        <translation>Words are missing, or are of two sets.</translation>
    </message>
    <message>
        <source>Type or paste all the words as they are shown.</source>
        <translation>Type or paste all the words as they are shown.</translation>
    </message>
    <message>
        <source>These words are no offer to share a rig.</source>
        <translation>These words are no offer to share a rig.</translation>
    </message>
    <message>
        <source>Type the words of the owner&apos;s device.</source>
        <translation>Type the words of the owner&apos;s device.</translation>
    </message>
    <message>
        <source>These words are no answer to the code shown here.</source>
        <translation>These words are no answer to the code shown here.</translation>
    </message>
    <message>
        <source>Show the code again, and answer it on the other device once more.</source>
        <translation>Show the code again, and answer it on the other device once more.</translation>
    </message>
    <message>
        <source>The code stood ten minutes and is over, or a clock is wrong.</source>
        <translation>The code stood ten minutes and is over, or a clock is wrong.</translation>
    </message>
    <message>
        <source>Show a new code.</source>
        <translation>Show a new code.</translation>
    </message>
    <message>
        <source>Only an owner&apos;s device may do this.</source>
        <translation>Only an owner&apos;s device may do this.</translation>
    </message>
    <message>
        <source>Do it on an owner&apos;s device.</source>
        <translation>Do it on an owner&apos;s device.</translation>
    </message>
    <message>
        <source>This is the last owner&apos;s device.</source>
        <translation>This is the last owner&apos;s device.</translation>
    </message>
    <message>
        <source>Enroll another owner first.</source>
        <translation>Enroll another owner first.</translation>
    </message>
    <message>
        <source>This logbook shares that rig already, with other devices.</source>
        <translation>This logbook shares that rig already, with other devices.</translation>
    </message>
    <message>
        <source>Use the sharing that is there, or a logbook of its own.</source>
        <translation>Use the sharing that is there, or a logbook of its own.</translation>
    </message>
    <message>
        <source>This was settled meanwhile.</source>
        <translation>This was settled meanwhile.</translation>
    </message>
    <message>
        <source>Nothing has to be done.</source>
        <translation>Nothing has to be done.</translation>
    </message>
    <message>
        <source>There is a store named %1 already.</source>
        <translation>There is a store named %1 already.</translation>
    </message>
    <message>
        <source>Give it another name.</source>
        <translation>Give it another name.</translation>
    </message>
    <message>
        <source>The store needs a name of letters, digits and hyphens.</source>
        <translation>The store needs a name of letters, digits and hyphens.</translation>
    </message>
    <message>
        <source>Type one.</source>
        <translation>Type one.</translation>
    </message>
    <message>
        <source>This address cannot be used.</source>
        <translation>This address cannot be used.</translation>
    </message>
    <message>
        <source>Write it as https://host/folder/, without a user or a password in it.</source>
        <translation>Write it as https://host/folder/, without a user or a password in it.</translation>
    </message>
    <message>
        <source>This is no date: %1</source>
        <translation>This is no date: %1</translation>
    </message>
    <message>
        <source>Write it as 2027-03-31.</source>
        <translation>Write it as 2027-03-31.</translation>
    </message>
    <message>
        <source>These words are no key on paper.</source>
        <translation>These words are no key on paper.</translation>
    </message>
    <message>
        <source>Type the 24 words of the paper.</source>
        <translation>Type the 24 words of the paper.</translation>
    </message>
    <message>
        <source>This store has no rig of that key, or one with another mark: %1</source>
        <translation>This store has no rig of that key, or one with another mark: %1</translation>
    </message>
    <message>
        <source>Exchange once from a device that has the rig, or take another store. A rig with another mark was made up by somebody.</source>
        <translation>Exchange once from a device that has the rig, or take another store. A rig with another mark was made up by somebody.</translation>
    </message>
    <message>
        <source>Several rigs at this store name that key an owner: %1</source>
        <translation>Several rigs at this store name that key an owner: %1</translation>
    </message>
    <message>
        <source>Type the mark that stands beside the words.</source>
        <translation>Type the mark that stands beside the words.</translation>
    </message>
    <message>
        <source>No code was found in this picture.</source>
        <translation>No code was found in this picture.</translation>
    </message>
    <message>
        <source>Take it straight on and near, without glare; or type the words.</source>
        <translation>Take it straight on and near, without glare; or type the words.</translation>
    </message>
    <message>
        <source>This file is no picture that can be read: %1</source>
        <translation>This file is no picture that can be read: %1</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG picture.</source>
        <translation>Choose a JPEG or PNG picture.</translation>
    </message>
</context>
<context>
    <name>SyncPage</name>
    <message>
        <source>Exchange</source>
        <comment>with other devices</comment>
        <translation>Exchange</translation>
    </message>
    <message>
        <source>Nothing waits.</source>
        <translation>Nothing waits.</translation>
    </message>
    <message>
        <source>Look at what differs</source>
        <translation>Look at what differs</translation>
    </message>
    <message>
        <source>both versions are kept until a person chooses</source>
        <translation>both versions are kept until a person chooses</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Stores</translation>
    </message>
    <message>
        <source>No store yet. A store is a place where devices leave what is new for each other: a stick, a shared folder, a drive.</source>
        <translation>No store yet. A store is a place where devices leave what is new for each other: a stick, a shared folder, a drive.</translation>
    </message>
    <message>
        <source>add a store</source>
        <translation>add a store</translation>
    </message>
    <message>
        <source>Devices of this rig</source>
        <translation>Devices of this rig</translation>
    </message>
    <message>
        <source>Share with one more device</source>
        <translation>Share with one more device</translation>
    </message>
    <message>
        <source>Share this rig</source>
        <translation>Share this rig</translation>
    </message>
    <message>
        <source>take part in a rig of another device</source>
        <translation>take part in a rig of another device</translation>
    </message>
    <message>
        <source>What goes into a store is sealed: who finds a stick reads nothing of it. The logbook on this device is not locked beyond what the device itself does.</source>
        <translation>What goes into a store is sealed: who finds a stick reads nothing of it. The logbook on this device is not locked beyond what the device itself does.</translation>
    </message>
    <message>
        <source>ask for the photos in full</source>
        <translation>ask for the photos in full</translation>
    </message>
    <message>
        <source>ask for the originals of photos that are on other devices</source>
        <translation>ask for the originals of photos that are on other devices</translation>
    </message>
    <message>
        <source>Photos in full, when exchanging</source>
        <translation>Photos in full, when exchanging</translation>
    </message>
    <message>
        <source>those asked for</source>
        <comment>photos</comment>
        <translation>those asked for</translation>
    </message>
    <message>
        <source>all of them: on Wi-Fi</source>
        <comment>photos</comment>
        <translation>all of them: on Wi-Fi</translation>
    </message>
    <message>
        <source>Entries and small pictures of photos always come.</source>
        <translation>Entries and small pictures of photos always come.</translation>
    </message>
    <message>
        <source>make a key on paper</source>
        <translation>make a key on paper</translation>
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
        <translation>The rig</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Walk</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Finding</translation>
    </message>
    <message>
        <source>Look at a finding</source>
        <translation>Look at a finding</translation>
    </message>
    <message>
        <source>Mend</source>
        <translation>Mend</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Trip</source>
        <translation>Trip</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Stay</translation>
    </message>
    <message>
        <source>Weather record</source>
        <translation>Weather record</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Event</translation>
    </message>
    <message>
        <source>Own point</source>
        <translation>Own point</translation>
    </message>
    <message>
        <source>Hidden point</source>
        <translation>Hidden point</translation>
    </message>
    <message>
        <source>Own interval</source>
        <translation>Own interval</translation>
    </message>
    <message>
        <source>Drawing on a photo</source>
        <translation>Drawing on a photo</translation>
    </message>
    <message>
        <source>Supply on hand</source>
        <translation>Supply on hand</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Acceptance</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>mark</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>reason</translation>
    </message>
    <message>
        <source>how it was looked at</source>
        <translation>how it was looked at</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>readings</translation>
    </message>
    <message>
        <source>grade</source>
        <translation>grade</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>how much</translation>
    </message>
    <message>
        <source>defect</source>
        <translation>defect</translation>
    </message>
    <message>
        <source>place</source>
        <translation>place</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>what was done</translation>
    </message>
    <message>
        <source>what was done, in words</source>
        <translation>what was done, in words</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>parts</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>cost</translation>
    </message>
    <message>
        <source>findings it closes</source>
        <translation>findings it closes</translation>
    </message>
    <message>
        <source>when it was finished</source>
        <translation>when it was finished</translation>
    </message>
    <message>
        <source>name</source>
        <translation>name</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>fittings</translation>
    </message>
    <message>
        <source>measures</source>
        <translation>measures</translation>
    </message>
    <message>
        <source>ratings</source>
        <translation>ratings</translation>
    </message>
    <message>
        <source>tires</source>
        <translation>tires</translation>
    </message>
    <message>
        <source>wheels</source>
        <translation>wheels</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>amount</translation>
    </message>
    <message>
        <source>months</source>
        <translation>months</translation>
    </message>
    <message>
        <source>caption</source>
        <translation>caption</translation>
    </message>
    <message>
        <source>lines drawn</source>
        <translation>lines drawn</translation>
    </message>
    <message>
        <source>written by a device that does not belong to this rig</source>
        <translation>written by a device that does not belong to this rig</translation>
    </message>
    <message>
        <source>written after its device was revoked</source>
        <translation>written after its device was revoked</translation>
    </message>
    <message>
        <source>carried for another device by one that is no owner</source>
        <translation>carried for another device by one that is no owner</translation>
    </message>
    <message>
        <source>it belongs to another rig</source>
        <translation>it belongs to another rig</translation>
    </message>
    <message>
        <source>a viewer writes nothing</source>
        <translation>a viewer writes nothing</translation>
    </message>
    <message>
        <source>only an owner decides this</source>
        <translation>only an owner decides this</translation>
    </message>
    <message>
        <source>a technician does not change the rig</source>
        <translation>a technician does not change the rig</translation>
    </message>
    <message>
        <source>a mend of what is licensed needs a certificate number</source>
        <translation>a mend of what is licensed needs a certificate number</translation>
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
        <translation>taken away</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>value of a field</comment>
        <translation>yes</translation>
    </message>
    <message>
        <source>no</source>
        <comment>value of a field</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>value of a field</comment>
        <translation>nothing</translation>
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
        <translation>picture of a tire&apos;s sidewall: 1 size, 2 largest load and pressure, 3 date code</translation>
    </message>
</context>
<context>
    <name>TrackSketch</name>
    <message>
        <source>sketch of the track</source>
        <translation>sketch of the track</translation>
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
        <translation>%1 less a year.</translation>
    </message>
    <message>
        <source>%1 more a year.</source>
        <translation>%1 more a year.</translation>
    </message>
    <message>
        <source>Likely to meet the limit about %1, from %2 to %3.</source>
        <translation>Likely to meet the limit about %1, from %2 to %3.</translation>
    </message>
    <message>
        <source>There is no limit to hold it against.</source>
        <translation>There is no limit to hold it against.</translation>
    </message>
    <message>
        <source>Too few readings for a line: three are wanted.</source>
        <translation>Too few readings for a line: three are wanted.</translation>
    </message>
    <message>
        <source>The last reading is past the limit.</source>
        <translation>The last reading is past the limit.</translation>
    </message>
    <message>
        <source>It does not move toward the limit.</source>
        <translation>It does not move toward the limit.</translation>
    </message>
    <message>
        <source>The limit is more than thirty years off by these readings; that says little.</source>
        <translation>The limit is more than thirty years off by these readings; that says little.</translation>
    </message>
    <message>
        <source>It grew back. Was it replaced? Write the mend down.</source>
        <translation>It grew back. Was it replaced? Write the mend down.</translation>
    </message>
    <message>
        <source>The readings do not tell when it meets the limit.</source>
        <translation>The readings do not tell when it meets the limit.</translation>
    </message>
    <message>
        <source>%1 on %2.</source>
        <comment>reading, date</comment>
        <translation>%1 on %2.</translation>
    </message>
    <message>
        <source>The square lies far off and is left out.</source>
        <translation>The square lies far off and is left out.</translation>
    </message>
    <message>
        <source>Open dots: before it was replaced.</source>
        <translation>Open dots: before it was replaced.</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>reading, sentence</comment>
        <translation>%1, plot: %2</translation>
    </message>
</context>
<context>
    <name>TrendPage</name>
    <message>
        <source>No reading was taken here yet.</source>
        <translation>No reading was taken here yet.</translation>
    </message>
    <message>
        <source>Readings over time</source>
        <translation>Readings over time</translation>
    </message>
    <message>
        <source>A reading is typed on a walk, at a line that measures something, such as the tires. Two of them make a trend.</source>
        <translation>A reading is typed on a walk, at a line that measures something, such as the tires. Two of them make a trend.</translation>
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
        <translation>measured on the way</translation>
    </message>
    <message>
        <source>from this rig&apos;s measured trips</source>
        <translation>from this rig&apos;s measured trips</translation>
    </message>
    <message>
        <source>from the road told by hand; common practice</source>
        <translation>from the road told by hand; common practice</translation>
    </message>
    <message>
        <source>no road told, nothing measured: a usual road is taken</source>
        <translation>no road told, nothing measured: a usual road is taken</translation>
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
        <translation>middle %1 m/km, roughest tenth from %2 m/km on, over %3</translation>
    </message>
    <message>
        <source>an index of this rig alone: not calibrated</source>
        <translation>an index of this rig alone: not calibrated</translation>
    </message>
    <message>
        <source>the sensor met its end: at least so much</source>
        <translation>the sensor met its end: at least so much</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) that aged the seals like %1</source>
        <translation>
            <numerusform>%n day that aged the seals like %1</numerusform>
            <numerusform>%n days that aged the seals like %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 that shook like %2</source>
        <comment>distances</comment>
        <translation>%1 that shook like %2</translation>
    </message>
    <message>
        <source>Seals: like %1 to %2 days; estimated from the place&apos;s usual weather or its records.</source>
        <translation>Seals: like %1 to %2 days; estimated from the place&apos;s usual weather or its records.</translation>
    </message>
    <message>
        <source>What the weather did is not known: the trip has no place, or there are no data for it.</source>
        <translation>What the weather did is not known: the trip has no place, or there are no data for it.</translation>
    </message>
    <message>
        <source>Shake: like %1 to %2; %3.</source>
        <comment>distances, basis</comment>
        <translation>Shake: like %1 to %2; %3.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Length</translation>
    </message>
    <message>
        <source>Of it straight lines over gaps</source>
        <translation>Of it straight lines over gaps</translation>
    </message>
    <message>
        <source>Start to end</source>
        <translation>Start to end</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Road</translation>
    </message>
    <message>
        <source>Up and down</source>
        <translation>Up and down</translation>
    </message>
    <message>
        <source>%1 up, %2 down</source>
        <comment>climb</comment>
        <translation>%1 up, %2 down</translation>
    </message>
    <message>
        <source>Lowest and highest</source>
        <translation>Lowest and highest</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>altitudes</comment>
        <translation>%1 and %2</translation>
    </message>
    <message>
        <source>Positions left out</source>
        <translation>Positions left out</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Read from</translation>
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
        <translation>Map of the trip, north up: from %1 to %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n stop(s).</source>
        <translation>
            <numerusform>%n stop.</numerusform>
            <numerusform>%n stops.</numerusform>
        </translation>
    </message>
    <message>
        <source>Where the sea is is not known here.</source>
        <translation>Where the sea is is not known here.</translation>
    </message>
    <message>
        <source>No coast is near.</source>
        <translation>No coast is near.</translation>
    </message>
</context>
<context>
    <name>TripPage</name>
    <message>
        <source>No trip yet. A track from a phone or a receiver, as GPX or NMEA, makes one.</source>
        <translation>No trip yet. A track from a phone or a receiver, as GPX or NMEA, makes one.</translation>
    </message>
    <message>
        <source>Take a track in</source>
        <translation>Take a track in</translation>
    </message>
    <message>
        <source>This trip has no line to draw: it was written by hand, or its track held too few positions.</source>
        <translation>This trip has no line to draw: it was written by hand, or its track held too few positions.</translation>
    </message>
    <message>
        <source>North is up. Ring: start. Dot: end. Numbers: stops of five minutes or more. A broken line is a worse road.</source>
        <translation>North is up. Ring: start. Dot: end. Numbers: stops of five minutes or more. A broken line is a worse road.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Stops</translation>
    </message>
    <message>
        <source>take in another log of its shaking</source>
        <translation>take in another log of its shaking</translation>
    </message>
    <message>
        <source>take in a log of its shaking</source>
        <translation>take in a log of its shaking</translation>
    </message>
    <message>
        <source>Coast: made from Natural Earth, public domain.</source>
        <translation>Coast: made from Natural Earth, public domain.</translation>
    </message>
    <message>
        <source>Roughness along the way, m/km</source>
        <translation>Roughness along the way, m/km</translation>
    </message>
    <message>
        <source>From where the log began. Full bars: rough, over the upper broken line. Under the lower one: smooth. A gap: too slow, uneven or handled.</source>
        <translation>From where the log began. Full bars: rough, over the upper broken line. Under the lower one: smooth. A gap: too slow, uneven or handled.</translation>
    </message>
    <message>
        <source>Trips</source>
        <translation>Trips</translation>
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
        <translation>E</translation>
    </message>
    <message>
        <source>maker&apos;s figure</source>
        <translation>maker&apos;s figure</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>measured</translation>
    </message>
    <message>
        <source>fitted to what was measured</source>
        <translation>fitted to what was measured</translation>
    </message>
    <message>
        <source>before anything was measured</source>
        <translation>before anything was measured</translation>
    </message>
    <message>
        <source>published</source>
        <translation>published</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>common practice</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>computed</translation>
    </message>
    <message>
        <source>travel trailer</source>
        <translation>travel trailer</translation>
    </message>
    <message>
        <source>fifth wheel</source>
        <translation>fifth wheel</translation>
    </message>
    <message>
        <source>folding trailer</source>
        <translation>folding trailer</translation>
    </message>
    <message>
        <source>teardrop</source>
        <translation>teardrop</translation>
    </message>
    <message>
        <source>truck camper</source>
        <translation>truck camper</translation>
    </message>
    <message>
        <source>motorhome</source>
        <translation>motorhome</translation>
    </message>
    <message>
        <source>camper van</source>
        <translation>camper van</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a finding</comment>
        <translation>open</translation>
    </message>
    <message>
        <source>mended, waiting for a look that confirms it</source>
        <translation>mended, waiting for a look that confirms it</translation>
    </message>
    <message>
        <source>mended, and seen so</source>
        <translation>mended, and seen so</translation>
    </message>
    <message>
        <source>gone, without a mend</source>
        <translation>gone, without a mend</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>replaced</translation>
    </message>
    <message>
        <source>sealed again</source>
        <translation>sealed again</translation>
    </message>
    <message>
        <source>tightened to the maker&apos;s figure</source>
        <translation>tightened to the maker&apos;s figure</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>cleaned</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>lubricated</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>adjusted</translation>
    </message>
    <message>
        <source>other work</source>
        <translation>other work</translation>
    </message>
    <message>
        <source>%1 can be read two ways. Write %2 or %3.</source>
        <translation>%1 can be read two ways. Write %2 or %3.</translation>
    </message>
</context>
<context>
    <name>WaitingPhotos</name>
    <message>
        <source>No photo waits for its mark.</source>
        <translation>No photo waits for its mark.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark; press those of this finding</source>
        <translation>
            <numerusform>%n photo wait for a mark; press those of this finding</numerusform>
            <numerusform>%n photos wait for a mark; press those of this finding</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) wait for a mark</source>
        <translation>
            <numerusform>%n photo wait for a mark</numerusform>
            <numerusform>%n photos wait for a mark</numerusform>
        </translation>
    </message>
    <message>
        <source>waiting, number %1</source>
        <comment>photo</comment>
        <translation>waiting, number %1</translation>
    </message>
    <message>
        <source>put away</source>
        <comment>a photo</comment>
        <translation>put away</translation>
    </message>
    <message numerus="yes">
        <source>bring back %n put away</source>
        <comment>photos</comment>
        <translation>
            <numerusform>bring back %n put away</numerusform>
            <numerusform>bring back %n put away</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WalkBudget</name>
    <message>
        <source>Left out, though on the hold list: %1.</source>
        <comment>points</comment>
        <translation>Left out, though on the hold list: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>points</comment>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message>
        <source>Leaves out %1 of %2 points: %3.</source>
        <translation>Leaves out %1 of %2 points: %3.</translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message numerus="yes">
        <source>%n line(s) left</source>
        <comment>of the walk</comment>
        <translation>
            <numerusform>%n line left</numerusform>
            <numerusform>%n lines left</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>stand; lines left</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>all lines</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>undo</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>pass at a glance</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>stop here</translation>
    </message>
    <message>
        <source>emergency</source>
        <comment>opens the emergency card</comment>
        <translation>emergency</translation>
    </message>
</context>
<context>
    <name>WalkRow</name>
    <message>
        <source>%1, still open</source>
        <comment>kind of walk</comment>
        <translation>%1, still open</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>date, person</comment>
        <translation>%1, by %2</translation>
    </message>
</context>
<context>
    <name>WalkWords</name>
    <message>
        <source>could not look</source>
        <comment>act</comment>
        <translation>could not look</translation>
    </message>
    <message>
        <source>not fitted</source>
        <comment>act</comment>
        <translation>not fitted</translation>
    </message>
    <message>
        <source>look again later</source>
        <comment>act</comment>
        <translation>look again later</translation>
    </message>
    <message>
        <source>pass at a glance</source>
        <comment>act</comment>
        <translation>pass at a glance</translation>
    </message>
    <message>
        <source>all lines</source>
        <translation>all lines</translation>
    </message>
    <message>
        <source>stop here</source>
        <translation>stop here</translation>
    </message>
    <message>
        <source>photos now, marks after</source>
        <translation>photos now, marks after</translation>
    </message>
</context>
<context>
    <name>WeighPicture</name>
    <message>
        <source>coupled</source>
        <comment>on the scale</comment>
        <translation>coupled</translation>
    </message>
    <message>
        <source>with bars</source>
        <comment>on the scale</comment>
        <translation>with bars</translation>
    </message>
    <message>
        <source>alone</source>
        <comment>on the scale</comment>
        <translation>alone</translation>
    </message>
</context>
<context>
    <name>WentPage</name>
    <message>
        <source>How it went</source>
        <translation>How it went</translation>
    </message>
    <message>
        <source>Of what</source>
        <comment>a plot is about it</comment>
        <translation>Of what</translation>
    </message>
    <message>
        <source>Which</source>
        <comment>one of several plots</comment>
        <translation>Which</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Working it out …</translation>
    </message>
    <message>
        <source>%1, plot: %2</source>
        <comment>title, sentence</comment>
        <translation>%1, plot: %2</translation>
    </message>
    <message>
        <source>Press the plot, or go along it, to read its numbers.</source>
        <translation>Press the plot, or go along it, to read its numbers.</translation>
    </message>
    <message>
        <source>earlier</source>
        <comment>go back in time along a plot</comment>
        <translation>earlier</translation>
    </message>
    <message>
        <source>later</source>
        <comment>go on in time along a plot</comment>
        <translation>later</translation>
    </message>
    <message>
        <source>the last two years alone</source>
        <translation>the last two years alone</translation>
    </message>
    <message>
        <source>every month there is</source>
        <translation>every month there is</translation>
    </message>
    <message>
        <source>fold the numbers</source>
        <translation>fold the numbers</translation>
    </message>
    <message>
        <source>all its numbers</source>
        <translation>all its numbers</translation>
    </message>
    <message>
        <source>Save: %1</source>
        <comment>kind of file</comment>
        <translation>Save: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <comment>file name</comment>
        <translation>Written: %1</translation>
    </message>
</context>
<context>
    <name>WhatIfPage</name>
    <message>
        <source>What if</source>
        <translation>What if</translation>
    </message>
    <message>
        <source>Say where it would stand and how far it would go: the dates that move are worked out. Nothing of this is written into the logbook.</source>
        <translation>Say where it would stand and how far it would go: the dates that move are worked out. Nothing of this is written into the logbook.</translation>
    </message>
    <message>
        <source>take away</source>
        <comment>a leg of the plan</comment>
        <translation>take away</translation>
    </message>
    <message>
        <source>take away %1</source>
        <translation>take away %1</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Working it out …</translation>
    </message>
    <message>
        <source>One leg more</source>
        <translation>One leg more</translation>
    </message>
    <message>
        <source>The first leg</source>
        <translation>The first leg</translation>
    </message>
</context>
<context>
    <name>WheelMap</name>
    <message>
        <source>front</source>
        <comment>of the rig, on a drawing from above</comment>
        <translation>front</translation>
    </message>
    <message>
        <source>%1: no reading was taken yet</source>
        <comment>a wheel</comment>
        <translation>%1: no reading was taken yet</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>its readings over time</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>at least %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>at most %1</translation>
    </message>
    <message>
        <source>maker&apos;s figure: not typed in</source>
        <translation>maker&apos;s figure: not typed in</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>limits, whose</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>low</source>
        <comment>a reading</comment>
        <translation>low</translation>
    </message>
    <message>
        <source>high</source>
        <comment>a reading</comment>
        <translation>high</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>no reading</translation>
    </message>
</context>
<context>
    <name>WhyFacts</name>
    <message>
        <source>pass, at a glance</source>
        <translation>pass, at a glance</translation>
    </message>
    <message>
        <source>pass, measured</source>
        <translation>pass, measured</translation>
    </message>
    <message>
        <source>pass, looked at</source>
        <translation>pass, looked at</translation>
    </message>
    <message>
        <source>attention</source>
        <translation>attention</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>not fitted</translation>
    </message>
    <message>
        <source>could not look: %1</source>
        <comment>reason</comment>
        <translation>could not look: %1</translation>
    </message>
    <message>
        <source>time, as it ages it</source>
        <translation>time, as it ages it</translation>
    </message>
    <message>
        <source>distance, as the road uses it up</source>
        <translation>distance, as the road uses it up</translation>
    </message>
    <message>
        <source>nobody has looked at it yet</source>
        <translation>nobody has looked at it yet</translation>
    </message>
    <message>
        <source>its readings, on their way to a limit</source>
        <translation>its readings, on their way to a limit</translation>
    </message>
    <message>
        <source>each move</source>
        <translation>each move</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation>Interval</translation>
    </message>
    <message>
        <source>What makes it due</source>
        <translation>What makes it due</translation>
    </message>
    <message>
        <source>Rests on</source>
        <comment>what a figure rests on</comment>
        <translation>Rests on</translation>
    </message>
    <message>
        <source>Time to look from</source>
        <translation>Time to look from</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <comment>what, who</comment>
        <translation>%1, by %2</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Nothing has a date yet: dates come with the first walk.</source>
        <translation>Nothing has a date yet: dates come with the first walk.</translation>
    </message>
    <message>
        <source>How the date comes about</source>
        <translation>How the date comes about</translation>
    </message>
    <message>
        <source>From the catalogue&apos;s date down: a step to the left is sooner, to the right later. Ring: likely, on its line from early to late. Upright: today.</source>
        <translation>From the catalogue&apos;s date down: a step to the left is sooner, to the right later. Ring: likely, on its line from early to late. Upright: today.</translation>
    </message>
    <message>
        <source>What it goes by</source>
        <translation>What it goes by</translation>
    </message>
    <message>
        <source>its readings over time</source>
        <translation>its readings over time</translation>
    </message>
    <message>
        <source>what if it goes elsewhere</source>
        <translation>what if it goes elsewhere</translation>
    </message>
    <message>
        <source>Last looks and mends</source>
        <translation>Last looks and mends</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>None yet.</translation>
    </message>
    <message>
        <source>What the weather is taken from</source>
        <translation>What the weather is taken from</translation>
    </message>
    <message>
        <source>Where the catalogue has it from</source>
        <translation>Where the catalogue has it from</translation>
    </message>
    <message>
        <source>Why it is due then</source>
        <translation>Why it is due then</translation>
    </message>
</context>
<context>
    <name>WhyPicture</name>
    <message>
        <source>by the catalogue alone</source>
        <translation>by the catalogue alone</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>likely</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The catalogue alone: %1.</source>
        <translation>The catalogue alone: %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>cause, months sooner or later</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>small causes together</source>
        <translation>small causes together</translation>
    </message>
    <message>
        <source>Likely: %1.</source>
        <translation>Likely: %1.</translation>
    </message>
</context>
<context>
    <name>ZoomRow</name>
    <message>
        <source>drawing nearer</source>
        <translation>drawing nearer</translation>
    </message>
    <message>
        <source>drawing farther</source>
        <translation>drawing farther</translation>
    </message>
    <message>
        <source>whole</source>
        <comment>the whole drawing</comment>
        <translation>whole</translation>
    </message>
    <message>
        <source>left</source>
        <comment>move the drawing</comment>
        <translation>left</translation>
    </message>
    <message>
        <source>right</source>
        <comment>move the drawing</comment>
        <translation>right</translation>
    </message>
    <message>
        <source>up</source>
        <comment>move the drawing</comment>
        <translation>up</translation>
    </message>
    <message>
        <source>down</source>
        <comment>move the drawing</comment>
        <translation>down</translation>
    </message>
    <message>
        <source>every finding ever</source>
        <translation>every finding ever</translation>
    </message>
</context>
<context>
    <name>snugwalk::BenchModel</name>
    <message>
        <source>To keep it, start a walk and mark “%1” first.</source>
        <comment>a point</comment>
        <translation>To keep it, start a walk and mark “%1” first.</translation>
    </message>
    <message>
        <source>To keep it, mark “%1” on this walk first: what it got is said by a person.</source>
        <comment>a point</comment>
        <translation>To keep it, mark “%1” on this walk first: what it got is said by a person.</translation>
    </message>
    <message>
        <source>“%1” is on attention: its readings go with the finding.</source>
        <comment>a point</comment>
        <translation>“%1” is on attention: its readings go with the finding.</translation>
    </message>
    <message>
        <source>%1, on “%2”</source>
        <comment>reading, point</comment>
        <translation>%1, on “%2”</translation>
    </message>
    <message>
        <source>Still to type: %1.</source>
        <translation>Still to type: %1.</translation>
    </message>
    <message>
        <source>Kept on this walk: %1.</source>
        <translation>Kept on this walk: %1.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BookModel</name>
    <message>
        <source>There are no two walks to lay side by side yet.</source>
        <translation>There are no two walks to lay side by side yet.</translation>
    </message>
</context>
<context>
    <name>snugwalk::BooksModel</name>
    <message>
        <source>Making the invented rig …</source>
        <translation>Making the invented rig …</translation>
    </message>
    <message>
        <source>Making the invented rig: %1 of %2</source>
        <translation>Making the invented rig: %1 of %2</translation>
    </message>
    <message>
        <source>The invented rig is gone from this device.</source>
        <translation>The invented rig is gone from this device.</translation>
    </message>
    <message>
        <source>Copying the logbook with its photos …</source>
        <translation>Copying the logbook with its photos …</translation>
    </message>
    <message>
        <source>Copied with its photos: %1</source>
        <translation>Copied with its photos: %1</translation>
    </message>
    <message>
        <source>Copying and checking the backup …</source>
        <translation>Copying and checking the backup …</translation>
    </message>
    <message>
        <source>Checked and opened: %1</source>
        <translation>Checked and opened: %1</translation>
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
        <translation>Type the length first, such as 120 mm or 4 3/4 in.</translation>
    </message>
    <message>
        <source>Not understood: %1. Write it for example as 120 mm or 4 3/4 in.</source>
        <translation>Not understood: %1. Write it for example as 120 mm or 4 3/4 in.</translation>
    </message>
</context>
<context>
    <name>snugwalk::DueModel</name>
    <message>
        <source>before each move</source>
        <translation>before each move</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>not looked at yet</translation>
    </message>
    <message numerus="yes">
        <source>past due %n days</source>
        <translation>
            <numerusform>past due %n day</numerusform>
            <numerusform>past due %n days</numerusform>
        </translation>
    </message>
    <message>
        <source>due now, at the latest %1</source>
        <translation>due now, at the latest %1</translation>
    </message>
    <message>
        <source>likely %1, from %2 to %3</source>
        <translation>likely %1, from %2 to %3</translation>
    </message>
    <message>
        <source>Nothing falls due within a month.</source>
        <translation>Nothing falls due within a month.</translation>
    </message>
    <message numerus="yes">
        <source>%n are past due.</source>
        <translation>
            <numerusform>%n is past due.</numerusform>
            <numerusform>%n are past due.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fall due within a month.</source>
        <translation>
            <numerusform>%n falls due within a month.</numerusform>
            <numerusform>%n fall due within a month.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were not looked at yet.</source>
        <translation>
            <numerusform>%n was not looked at yet.</numerusform>
            <numerusform>%n were not looked at yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) are due sooner than by the catalogue alone.</source>
        <translation>
            <numerusform>%n point is due sooner than by the catalogue alone.</numerusform>
            <numerusform>%n points are due sooner than by the catalogue alone.</numerusform>
        </translation>
    </message>
    <message>
        <source>Moved most: %1, %2.</source>
        <comment>point, 1.3 months sooner: causes</comment>
        <translation>Moved most: %1, %2.</translation>
    </message>
</context>
<context>
    <name>snugwalk::FindingModel</name>
    <message>
        <source>gone</source>
        <translation>gone</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>mend soon, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>mend soon, %1</translation>
    </message>
    <message>
        <source>watch, %1</source>
        <comment>concern 0 to 100</comment>
        <translation>watch, %1</translation>
    </message>
    <message>
        <source>Concern %1, between %2 and %3, of 100.</source>
        <translation>Concern %1, between %2 and %3, of 100.</translation>
    </message>
    <message>
        <source>may be as bad as the first of its kind</source>
        <comment>a tie</comment>
        <translation>may be as bad as the first of its kind</translation>
    </message>
</context>
<context>
    <name>snugwalk::IntakeModel</name>
    <message>
        <source>a trip</source>
        <translation>a trip</translation>
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
        <translation>%1, written %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::PaperModel</name>
    <message>
        <source>key on paper of %1</source>
        <comment>date</comment>
        <translation>key on paper of %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::PlotsModel</name>
    <message>
        <source>the worst of the rig</source>
        <translation>the worst of the rig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>point: defect</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>picture, PNG</source>
        <comment>kind of file</comment>
        <translation>picture, PNG</translation>
    </message>
    <message>
        <source>drawing, SVG</source>
        <comment>kind of file</comment>
        <translation>drawing, SVG</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>table, CSV</translation>
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
            <numerusform>%n of your own</numerusform>
            <numerusform>%n of your own</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hidden</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n hidden</numerusform>
            <numerusform>%n hidden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at an interval of your own</source>
        <comment>points</comment>
        <translation>
            <numerusform>%n at an interval of your own</numerusform>
            <numerusform>%n at an interval of your own</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugwalk::PositionModel</name>
    <message>
        <source>no position</source>
        <translation>no position</translation>
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
        <translation>web page</translation>
    </message>
    <message>
        <source>table, CSV</source>
        <comment>kind of file</comment>
        <translation>table, CSV</translation>
    </message>
    <message>
        <source>calendar</source>
        <comment>kind of file</comment>
        <translation>calendar</translation>
    </message>
    <message>
        <source>map data, GeoJSON</source>
        <comment>kind of file</comment>
        <translation>map data, GeoJSON</translation>
    </message>
    <message>
        <source>the last one</source>
        <comment>which walk</comment>
        <translation>the last one</translation>
    </message>
    <message>
        <source>the one that suits</source>
        <comment>which earlier walk</comment>
        <translation>the one that suits</translation>
    </message>
</context>
<context>
    <name>snugwalk::RigModel</name>
    <message>
        <source>Go on with the walk</source>
        <translation>Go on with the walk</translation>
    </message>
    <message>
        <source>Start a walk</source>
        <translation>Start a walk</translation>
    </message>
    <message>
        <source>every line has a mark</source>
        <translation>every line has a mark</translation>
    </message>
    <message>
        <source>at %1, %2 left</source>
        <comment>line of the walk, number of lines</comment>
        <translation>at %1, %2 left</translation>
    </message>
</context>
<context>
    <name>snugwalk::Session</name>
    <message>
        <source>one person</source>
        <comment>who looked</comment>
        <translation>one person</translation>
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
        <translation>%1, due</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what for, how much</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <comment>amount</comment>
        <translation>%1 needed</translation>
    </message>
    <message>
        <source>%1 on hand</source>
        <comment>amount</comment>
        <translation>%1 on hand</translation>
    </message>
    <message>
        <source>get %1</source>
        <comment>how many pieces</comment>
        <translation>get %1</translation>
    </message>
</context>
<context>
    <name>snugwalk::TapeModel</name>
    <message>
        <source>at a glance</source>
        <translation>at a glance</translation>
    </message>
</context>
<context>
    <name>snugwalk::TripModel</name>
    <message>
        <source>A trip</source>
        <translation>A trip</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>date, times</comment>
        <translation>%1, %2 to %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 to %2</translation>
    </message>
</context>
<context>
    <name>snugwalk::WalkModel</name>
    <message>
        <source>%1 of %2 lines, %3 left</source>
        <translation>%1 of %2 lines, %3 left</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhatIfModel</name>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 to %2</translation>
    </message>
    <message>
        <source>under a roof</source>
        <translation>under a roof</translation>
    </message>
    <message>
        <source>in the open</source>
        <translation>in the open</translation>
    </message>
    <message>
        <source>%1 driven, road: %2</source>
        <translation>%1 driven, road: %2</translation>
    </message>
    <message>
        <source>No date moves.</source>
        <translation>No date moves.</translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) come sooner.</source>
        <translation>
            <numerusform>%n date comes sooner.</numerusform>
            <numerusform>%n dates come sooner.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n date(s) go later.</source>
        <translation>
            <numerusform>%n date goes later.</numerusform>
            <numerusform>%n dates go later.</numerusform>
        </translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>a day sooner</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>a day later</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>1.3 months sooner, cause</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, as usual %2</source>
        <comment>dates</comment>
        <translation>%1, as usual %2</translation>
    </message>
    <message>
        <source>Another leg has some of these days.</source>
        <translation>Another leg has some of these days.</translation>
    </message>
    <message>
        <source>Change the days, or take the other leg away.</source>
        <translation>Change the days, or take the other leg away.</translation>
    </message>
</context>
<context>
    <name>snugwalk::WhyModel</name>
    <message>
        <source>early %1, likely %2, late %3</source>
        <comment>dates</comment>
        <translation>early %1, likely %2, late %3</translation>
    </message>
</context>
</TS>
