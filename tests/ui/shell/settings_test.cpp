#include "ui/shell/settings.h"

#include <QTemporaryDir>
#include <QTest>

#include "tests/ui/support/qt_class.h"

namespace wardchalk::ui::settings_test {

class SettingsTest : public QObject {
  Q_OBJECT

 private Q_SLOTS:
  void startsWithNothingOffered();
  void keepsWhatWasSet();
  void aDamagedZoomIsTheUsualOne_data();
  void aDamagedZoomIsTheUsualOne();

 private:
  QString file() const { return folder_.filePath(QStringLiteral("settings.ini")); }
  QTemporaryDir folder_;
};

void SettingsTest::startsWithNothingOffered() {
  const Settings settings(folder_.filePath(QStringLiteral("new.ini")));
  QCOMPARE(settings.unitSystem(), UnitSystem::none);
  QCOMPARE(settings.zoom(), 100);
  QVERIFY(settings.geometry().isEmpty());
  QVERIFY(settings.rules().isEmpty());
}

void SettingsTest::keepsWhatWasSet() {
  {
    Settings settings(file());
    settings.setUnitSystem(UnitSystem::household);
    settings.setZoom(150);
    settings.setGeometry("place");
    settings.setRules(QStringLiteral("/ward/rules.json"));
  }
  const Settings settings(file());
  QCOMPARE(settings.unitSystem(), UnitSystem::household);
  QCOMPARE(settings.zoom(), 150);
  QCOMPARE(settings.geometry(), QByteArray("place"));
  QCOMPARE(settings.rules(), QStringLiteral("/ward/rules.json"));
}

void SettingsTest::aDamagedZoomIsTheUsualOne_data() {
  QTest::addColumn<QString>("kept");
  QTest::addColumn<int>("zoom");
  QTest::newRow("words") << "large" << 100;
  QTest::newRow("too small") << "5" << leastZoom;
  QTest::newRow("too large") << "9000" << mostZoom;
}

void SettingsTest::aDamagedZoomIsTheUsualOne() {
  QFETCH(QString, kept);
  QFETCH(int, zoom);
  {
    QSettings store(file(), QSettings::IniFormat);
    store.setValue(QStringLiteral("zoom"), kept);
  }
  QCOMPARE(Settings(file()).zoom(), zoom);
}

WARDCHALK_QT_CORE_TEST(SettingsTest)

}  // namespace wardchalk::ui::settings_test

#include "settings_test.moc"
