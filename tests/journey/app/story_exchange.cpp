// SPDX-License-Identifier: Apache-2.0
// Two devices and a folder between them: one shows a code, the other answers, six digits are compared, and
// the rig goes over; then what each writes comes to the other.
#include <iostream>
#include <string>

#include "app_steps.hpp"
#include "share_model.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

const QString store = QStringLiteral("shed");

// What the driver hands over from the other device.
QString hear()
{
    std::string line;
    std::getline(std::cin, line);
    expect(!line.empty(), QStringLiteral("the other device said nothing"));
    return QString::fromStdString(line);
}

const ShareModel &shareOf(Life &life) { return *life.session().sync()->share(); }

void addStore(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("add a store"));
    finger.type(QStringLiteral("Name of the store"), store);
    finger.type(QStringLiteral("Its folder"), life.given(QStringLiteral("folder")));
    finger.tap(QStringLiteral("Add the store"));
    finger.waitFor([&] { return finger.sees(QStringLiteral("Exchange now with ") + store); },
                   QStringLiteral("the store in the list"));
}

void exchange(Life &life, const QString &shot)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("Exchange now with ") + store);
    finger.waitFor([&] { return !life.session().sync()->property("outcome").toStringList().isEmpty(); },
                   QStringLiteral("the end of the exchange"), 60'000);
    life.shot(shot);
}

void owner(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("Logbook"));
    finger.tapStarting(QStringLiteral("exchange"));
    life.arrive(QStringLiteral("sync"));
    life.shot(QStringLiteral("exchange-1-owner"));
    addStore(life);
    finger.tap(QStringLiteral("Share this rig"));
    finger.tap(QStringLiteral("What the other device may do: owner"));
    finger.tap(QStringLiteral("Show the code"));
    finger.waitFor([&] { return !shareOf(life).property("words").toString().isEmpty(); },
                   QStringLiteral("the code"));
    life.shot(QStringLiteral("exchange-2-code"));
    say(QStringLiteral("code ") + shareOf(life).property("words").toString().simplified());
    finger.paste(QStringLiteral("What the other device shows now, as words"), hear());
    finger.tap(QStringLiteral("Take the answer"));
    finger.waitFor([&] { return !shareOf(life).property("code").toString().isEmpty(); },
                   QStringLiteral("six digits"));
    life.shot(QStringLiteral("exchange-4-digits"));
    say(QStringLiteral("digits ") + shareOf(life).property("code").toString());
    finger.tap(QStringLiteral("The same digits: enroll it"));
    finger.tap(QStringLiteral("To the stores"));
    exchange(life, QStringLiteral("exchange-5-owner-exchanged"));
    say(QStringLiteral("exchanged"));
    (void)hear(); // the other has the rig, has marked it and exchanged
    exchange(life, QStringLiteral("exchange-8-came-back"));
}

void other(Life &life)
{
    Finger &finger = life.finger();
    finger.tapStarting(QStringLiteral("or take part in a rig of another device"));
    life.arrive(QStringLiteral("sync"));
    addStore(life);
    finger.tap(QStringLiteral("take part in a rig of another device"));
    finger.paste(QStringLiteral("Words of the owner's device"), hear());
    finger.tap(QStringLiteral("What this device asks to be; the owner decides: owner"));
    finger.tap(QStringLiteral("Answer"));
    finger.waitFor([&] { return !shareOf(life).property("code").toString().isEmpty(); },
                   QStringLiteral("six digits"));
    life.shot(QStringLiteral("exchange-3-answer"));
    say(QStringLiteral("answer ") + shareOf(life).property("words").toString().simplified());
    say(QStringLiteral("digits ") + shareOf(life).property("code").toString());
    (void)hear(); // the owner has enrolled this device and exchanged
    finger.tap(QStringLiteral("To the stores"));
    exchange(life, QStringLiteral("exchange-6-rig-came"));
    expect(life.session().hasRig(), QStringLiteral("the rig did not come"));
    goHomeTo(life, QStringLiteral("Rig"));
    life.shot(QStringLiteral("exchange-7-rig"));
    startWalk(life, QStringLiteral("Before the road."));
    passLine(life);
    finishWalk(life);
    finger.tapStarting(QStringLiteral("Logbook"));
    finger.tapStarting(QStringLiteral("exchange"));
    exchange(life, QStringLiteral("exchange-7b-sent"));
    say(QStringLiteral("sent"));
}

} // namespace

Stories exchangeStories() { return {{QStringLiteral("owner"), owner}, {QStringLiteral("other"), other}}; }

} // namespace snugwalk::journey
