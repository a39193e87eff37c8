// SPDX-License-Identifier: Apache-2.0
// Real mouse events at the middle of what is seen; nothing is called behind the screen's back.
#include "finger.hpp"

#include <cstdio>
#include <cstdlib>
#include <optional>

#include <QClipboard>
#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include "wiring.hpp"

namespace snugwalk::journey {
namespace {

// What is written on it and what a screen reader says: either may be what a person goes by.
bool isCalled(const QQuickItem &item, const std::function<bool(const QString &)> &match)
{
    return match(item.property("text").toString()) || match(item.property("spoken").toString());
}

bool isPress(const QQuickItem &item) { return item.inherits("QQuickAbstractButton"); }

QQuickItem *search(QQuickItem *item, const std::function<bool(QQuickItem &)> &wanted)
{
    if (item == nullptr || !item->isVisible() || item->opacity() <= 0.0)
        return nullptr;
    if (wanted(*item))
        return item;
    const auto children = item->childItems();
    for (QQuickItem *child : children) {
        if (QQuickItem *found = search(child, wanted))
            return found;
    }
    return nullptr;
}

// As a finger drags a page until the thing stands in the middle of it.
void bringIntoView(QQuickItem &item)
{
    for (QQuickItem *parent = item.parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (!parent->inherits("QQuickFlickable"))
            continue;
        const QPointF at = item.mapToItem(parent, QPointF(0, item.height() / 2));
        const double content = parent->property("contentY").toDouble();
        const double most = std::max(0.0, parent->property("contentHeight").toDouble() - parent->height());
        const double origin = parent->property("originY").toDouble();
        if (at.y() < 24 || at.y() > parent->height() - 24)
            parent->setProperty("contentY",
                                std::clamp(content + at.y() - parent->height() / 2, origin, origin + most));
    }
}

// Drags the page one screen on, from the end back to the start: long lists make only what they show.
void leafOn(QQuickItem &page)
{
    QQuickItem *list = search(&page, [](QQuickItem &item) {
        return item.inherits("QQuickFlickable") && item.property("interactive").toBool() &&
               item.property("contentHeight").toDouble() > item.height() + 1;
    });
    if (list == nullptr)
        return;
    const double origin = list->property("originY").toDouble();
    const double end = origin + list->property("contentHeight").toDouble() - list->height();
    const double at = list->property("contentY").toDouble();
    list->setProperty("contentY", at > end - 2 ? origin : std::min(end, at + 0.8 * list->height()));
}

} // namespace

void giveUp(const QString &why)
{
    std::printf("failed: %s\n", qPrintable(why));
    std::fflush(stdout);
    std::_Exit(1);
}

void expect(bool condition, const QString &what)
{
    if (!condition)
        giveUp(what);
}

QQuickWindow &Finger::window() const { return m_app.window(); }

void Finger::press(QPointF at)
{
    ++m_taps;
    QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier, at.toPoint());
}

void Finger::waitFor(const std::function<bool()> &condition, const QString &what, int patienceMs)
{
    if (!QTest::qWaitFor(condition, patienceMs))
        giveUp(QStringLiteral("waited in vain for: ") + what);
}

QQuickItem *Finger::find(const Match &match) const
{
    return search(window().contentItem(), [&](QQuickItem &item) {
        return isPress(item) && item.isEnabled() && isCalled(item, match);
    });
}

QQuickItem *Finger::itemOfType(const QString &qmlType) const
{
    return search(window().contentItem(), [&](QQuickItem &item) {
        return QString::fromLatin1(item.metaObject()->className())
            .startsWith(qmlType + QStringLiteral("_QMLTYPE"));
    });
}

QQuickItem *Finger::itemWith(const char *property, const QVariant &value) const
{
    return search(window().contentItem(), [&](QQuickItem &item) { return item.property(property) == value; });
}

void Finger::touch(QQuickItem &item, double across, double down)
{
    bringIntoView(item);
    QTest::qWait(30);
    const QPointF at = item.mapToScene(QPointF(item.width() * across, item.height() * down));
    expect(QRectF(QPointF(0, 0), window().size()).contains(at), QStringLiteral("a touch outside the window"));
    press(at);
    QTest::qWait(30);
}

bool Finger::reads(const QString &words) const
{
    return search(window().contentItem(), [&](QQuickItem &item) {
               return item.property("text").toString().contains(words);
           }) != nullptr;
}

bool Finger::sees(const QString &words) const
{
    return find([&](const QString &name) { return name == words; }) != nullptr;
}

void Finger::tapMatching(const Match &match, const QString &what)
{
    for (int page = 0; page < 40 && !QTest::qWaitFor([&] { return find(match) != nullptr; }, 250); ++page)
        leafOn(*window().contentItem());
    waitFor([&] { return find(match) != nullptr; }, what);
    // What still moves, as a page grows, is not hit: press and release would come down on two places.
    // A row of a long list may be made anew while it comes into view.
    std::optional<QPointF> last;
    QPointF middle;
    for (int tries = 0; tries < 60; ++tries) {
        QQuickItem *item = find(match);
        if (item != nullptr) {
            bringIntoView(*item);
            middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
            if (last == middle)
                break;
        }
        last = item == nullptr ? std::nullopt : std::optional(middle);
        QTest::qWait(60);
    }
    expect(last.has_value(), what + QStringLiteral(" went away while it was brought into view"));
    expect(QRectF(QPointF(0, 0), window().size()).contains(middle),
           what + QStringLiteral(" lies outside the window"));
    press(middle);
}

void Finger::tap(const QString &words)
{
    tapMatching([&](const QString &name) { return name == words; }, words);
}

void Finger::tapStarting(const QString &start)
{
    tapMatching([&](const QString &name) { return name.startsWith(start); }, start);
}

QQuickItem &Finger::inputOf(const QString &label)
{
    const auto wanted = [&](QQuickItem &item) {
        return item.property("label").toString() == label && item.property("input").isValid();
    };
    waitFor([&] { return search(window().contentItem(), wanted) != nullptr; }, label);
    QQuickItem *field = search(window().contentItem(), wanted);
    auto *input = qvariant_cast<QQuickItem *>(field->property("input"));
    expect(input != nullptr, label + QStringLiteral(" takes no text"));
    return *input;
}

void Finger::touchField(const QString &label) { touch(inputOf(label), 0.5, 0.5); }

void Finger::type(const QString &label, const QString &text)
{
    QQuickItem &input = inputOf(label);
    bringIntoView(input);
    input.forceActiveFocus();
    ++m_taps;
    QTest::keyClick(&window(), Qt::Key_A, Qt::ControlModifier);
    if (text.isEmpty())
        QTest::keyClick(&window(), Qt::Key_Delete);
    for (const QChar letter : text)
        QTest::keyClick(&window(), letter.toLatin1());
}

void Finger::paste(const QString &label, const QString &text)
{
    type(label, {});
    QGuiApplication::clipboard()->setText(text);
    QTest::keyClick(&window(), Qt::Key_V, Qt::ControlModifier);
    expect(inputOf(label).property("text").toString() == text, label + QStringLiteral(" took nothing in"));
}

} // namespace snugwalk::journey
