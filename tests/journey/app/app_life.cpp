// SPDX-License-Identifier: Apache-2.0
// Opening the app and telling its driver how it went.
#include "app_life.hpp"

#include <cstdio>
#include <exception>

#include <QDir>
#include <QGuiApplication>
#include <QQuickStyle>
#include <QQuickWindow>

#include "app_steps.hpp"
#include "settled.hpp"

namespace snugwalk::journey {

Life::Life(const Given &given, Wiring::Mode mode) : m_given(given)
{
    Options options;
    options.book = given.book;
    options.cameraFolder = given.more.value(QStringLiteral("camera"));
    options.language = given.more.value(QStringLiteral("language"), QStringLiteral("en"));
    const auto now = parseLocal(given.time.toStdString());
    expect(now.has_value(), QStringLiteral("not a time: ") + given.time);
    options.now = *now;
    Result<std::unique_ptr<Wiring>> app = Wiring::make(options, mode);
    expect(app.has_value(), QStringLiteral("the app does not open"));
    m_app = std::move(app).value();
    m_finger = std::make_unique<Finger>(*m_app);
    settle();
}

QString Life::given(const QString &name) const
{
    expect(m_given.more.contains(name), QStringLiteral("the driver gave no ") + name);
    return m_given.more.value(name);
}

QString Life::place() { return m_app->window().property("currentPlace").toString(); }

void Life::arrive(const QString &place)
{
    m_finger->waitFor([&] { return this->place() == place; }, QStringLiteral("the page: ") + place);
}

void Life::settle()
{
    expect(waitUntilSettled(m_app->session(), m_app->window()), QStringLiteral("the app does not settle"));
}

void Life::shot(const QString &name)
{
    settle();
    QDir().mkpath(m_given.shots);
    const QString file = m_given.shots + QLatin1Char('/') + name + QStringLiteral(".png");
    expect(m_app->window().grabWindow().save(file), QStringLiteral("no picture: ") + file);
}

Life::Given readGiven(const QStringList &arguments)
{
    expect(arguments.size() >= 5, QStringLiteral("usage: ROLE BOOK SHOTS TIME [NAME=VALUE ...]"));
    Life::Given given{arguments[1], arguments[2], arguments[3], arguments[4], {}};
    for (const QString &one : arguments.mid(5))
        given.more[one.section(QLatin1Char('='), 0, 0)] = one.section(QLatin1Char('='), 1);
    return given;
}

namespace {

int liveOnce(int argc, char **argv, const Stories &stories)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const Life::Given given = readGiven(QGuiApplication::arguments());
    const auto story = stories.find(given.role);
    expect(story != stories.end(), QStringLiteral("no such life: ") + given.role);
    Life life(given, Wiring::Mode::Still);
    story->second(life);
    say(QStringLiteral("done"));
    return 0;
}

} // namespace

int live(int argc, char **argv, const Stories &stories)
{
    try {
        return liveOnce(argc, argv, stories);
    } catch (const std::exception &fault) {
        std::printf("failed: %s\n", fault.what());
        return 70;
    }
}

} // namespace snugwalk::journey
