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
  void aDamagedTextSizeIsKeptWithinItsEnds_data();
  void aDamagedTextSizeIsKeptWithinItsEnds();

 private:
  QString file() const { return folder_.filePath(QStringLiteral("settings.ini")); }
  QTemporaryDir folder_;
};

void SettingsTest::startsWithNothingOffered() {
  const Settings settings(folder_.filePath(QStringLiteral("new.ini")));
  QCOMPARE(settings.textSize(), 100);
  QVERIFY(settings.geometry().isEmpty());
  QVERIFY(settings.rules().isEmpty());
}

void SettingsTest::keepsWhatWasSet() {
  {
    Settings settings(file());
    settings.setTextSize(150);
    settings.setGeometry("place");
    settings.setRules(QStringLiteral("/ward/rules.json"));
  }
  const Settings settings(file());
  QCOMPARE(settings.textSize(), 150);
  QCOMPARE(settings.geometry(), QByteArray("place"));
  QCOMPARE(settings.rules(), QStringLiteral("/ward/rules.json"));
}

void SettingsTest::aDamagedTextSizeIsKeptWithinItsEnds_data() {
  QTest::addColumn<QString>("kept");
  QTest::addColumn<int>("zoom");
  QTest::newRow("words") << "large" << 100;
  QTest::newRow("too small") << "5" << leastTextSize;
  QTest::newRow("too large") << "9000" << mostTextSize;
}

void SettingsTest::aDamagedTextSizeIsKeptWithinItsEnds() {
  QFETCH(QString, kept);
  QFETCH(int, zoom);
  {
    QSettings store(file(), QSettings::IniFormat);
    store.setValue(QStringLiteral("zoom"), kept);
  }
  QCOMPARE(Settings(file()).textSize(), zoom);
}

WARDCHALK_QT_CORE_TEST(SettingsTest)

}  // namespace wardchalk::ui::settings_test

#include "settings_test.moc"
