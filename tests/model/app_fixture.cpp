// SPDX-License-Identifier: Apache-2.0
// Making logbooks and sessions for the tests of models.
#include "app_fixture.hpp"

#include <QtTest>

#include "data/embedded.hpp"
#include "data/product_world.hpp"
#include "demo/load_demo.hpp"
#include "logbook/acts.hpp"
#include "support/rigs.hpp"

namespace snugwalk::test {

AppFixture::AppFixture(Book book, const std::string &seed) : m_home(seed)
{
    clock().set(timeAt("2026-11-24T08:10:00+13:00"));
    if (book == Book::Tandem)
        SNUG_ASSERT(saveRig(m_home.book(), tandem(), {"A", std::nullopt, std::nullopt}).has_value());
    if (book == Book::Demo)
        SNUG_ASSERT(loadDemo(m_home.file(), builtInDemo(), m_codec).has_value());
    m_home.close();
    parts.catalogue = &productCatalogue();
    parts.supplies = &productSupplies();
    parts.texts = [](std::string_view language) { return productTexts(language); };
    parts.world = [] {
        static const auto world = std::make_shared<const World>(productWorld().world);
        return world;
    };
    parts.openBook = [this] { return m_home.tryOpen(m_home.file()); };
    parts.codec = &m_codec;
    parts.clock = &m_home.clock;
    parts.takenFolder = m_home.file() + ".taken";
    parts.still = true;
    parts.preferences.language = QStringLiteral("en");
    parts.preferences.person = QStringLiteral("A");
}

Session &AppFixture::open()
{
    m_session.reset();
    m_home.close();
    m_session = std::make_unique<Session>(parts);
    settle();
    return *m_session;
}

void AppFixture::settle()
{
    const bool settled = QTest::qWaitFor([this] { return m_session->isLoaded() && !m_session->isBusy(); });
    SNUG_ASSERT(settled);
}

void AppFixture::start(const QString &kind)
{
    QSignalSpy started(&walk(), &WalkModel::started);
    walk().start(kind);
    SNUG_ASSERT(!started.isEmpty() || started.wait());
    settle();
}

QString photoFile(const char *name)
{
    return QStringLiteral(SNUGWALK_SOURCE_DIR "/demo-rig/photos/") + QLatin1String(name);
}

QVariant cell(const QAbstractItemModel &model, int row, const char *role)
{
    return model.data(model.index(row, 0), model.roleNames().key(role, -1));
}

QStringList tapeStates(WalkModel &walk)
{
    QStringList states;
    for (int row = 0; row < walk.tape()->rowCount(); ++row)
        states << cell(*walk.tape(), row, "state").toString();
    return states;
}

} // namespace snugwalk::test
