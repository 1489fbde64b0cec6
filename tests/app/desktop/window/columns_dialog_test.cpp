// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/columns_dialog.h"
#include "core/study/clock.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/everything_said.h"

#include <QApplication>
#include <QComboBox>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

namespace bothways::app::tests {
namespace {

const char* const kUnknownUnit = "Datum;Uhrzeit;Konfiguration;Richtung;Verbrauch\n"
                                 "09.05.2026;05:40;A;out;8,41\n"
                                 "09.05.2026;05:47;A;return;8,22\n"
                                 "09.05.2026;06:43;B;out;8,47\n"
                                 "09.05.2026;06:50;B;return;8,31\n";

/// Somebody's own spreadsheet comes in through the window.
class ColumnsDialogTest : public WindowTest {
protected:
    void SetUp() override
    {
        click("newStudy");
        ASSERT_NE(window->document(), nullptr);
    }
    /// Imports, and lets a person answer each dialog that opens.
    int answered(const QString& file, const std::function<void(ColumnsDialog&)>& person)
    {
        return answered(
            file, [&] { window->importSheet(file); }, person);
    }
    int answered(const QString& file, const std::function<void()>& import,
                 const std::function<void(ColumnsDialog&)>& person)
    {
        int times = 0;
        QTimer watch;
        QObject::connect(&watch, &QTimer::timeout, &watch, [&] {
            if (auto* dialog = qobject_cast<ColumnsDialog*>(QApplication::activeModalWidget())) {
                watch.stop();
                ++times;
                if (qEnvironmentVariableIsSet("BOTHWAYS_PICTURES"))
                    dialog->grab().save(qEnvironmentVariable("BOTHWAYS_PICTURES") + "/columns_" +
                                        QFileInfo(file).completeBaseName() + ".png");
                person(*dialog);
            }
        });
        watch.start(10);
        import();
        return times;
    }
    static void reject(ColumnsDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); }
    static bool mayImport(const ColumnsDialog& dialog)
    {
        return dialog.findChild<QPushButton*>("importColumns")->isEnabled();
    }
    static QString missing(const ColumnsDialog& dialog)
    {
        return dialog.findChild<QLabel*>("missingColumns")->text();
    }
    static QComboBox* choice(const ColumnsDialog& dialog, const QString& header)
    {
        auto* table = dialog.findChild<QTableWidget*>("columnTable");
        for (int place = 0; place < table->columnCount(); ++place)
            if (table->horizontalHeaderItem(place)->text() == header)
                return qobject_cast<QComboBox*>(table->cellWidget(0, place));
        return nullptr;
    }
    /// With the keyboard, in the box of a column.
    static void choose(const ColumnsDialog& dialog, const QString& header, const QString& column)
    {
        QComboBox* box = choice(dialog, header);
        ASSERT_NE(box, nullptr) << header.toStdString();
        box->setFocus();
        for (int i = 0; i < box->count() && box->currentData().toString() != column; ++i)
            QTest::keyClick(box, Qt::Key_Down);
        EXPECT_EQ(box->currentData().toString(), column);
        QCoreApplication::processEvents(); // the table may be made anew
    }
    [[nodiscard]] std::size_t runs() const { return window->document()->study().runs.size(); }
};

/// Numbers alone, and neither the configuration nor the direction under a name that is known.
constexpr const char* kNumbersAlone = "Test;Weg;time;l_per_100km;km\n"
                                      "1;1;2026-05-09T07:00;8,41;5,0\n"
                                      "1;2;2026-05-09T07:07;8,25;5,0\n"
                                      "2;1;2026-05-09T07:20;8,11;5,0\n"
                                      "2;2;2026-05-09T07:27;8,02;5,0\n";

TEST_F(ColumnsDialogTest, ASheetOfNumbersAloneIsOfferedAsASheetBesideARecording)
{
    const QString file = write("zahlen.csv", kNumbersAlone);
    EXPECT_EQ(answered(file, reject), 0);
    EXPECT_TRUE(message().contains("looks like a logger's recording")) << message().toStdString();
    ASSERT_TRUE(find<QPushButton>("messageAction")->isVisible());
    const int times = answered(
        file, [&] { click("messageOtherwise"); },
        [&](ColumnsDialog& dialog) {
            choose(dialog, "Test", "configuration");
            choose(dialog, "Weg", "direction");
            ASSERT_TRUE(QTest::qWaitFor([&] { return mayImport(dialog); }))
                << missing(dialog).toStdString();
            QTest::mouseClick(dialog.findChild<QPushButton*>("importColumns"), Qt::LeftButton);
        });
    EXPECT_EQ(times, 1);
    EXPECT_EQ(runs(), 4U) << message().toStdString();
}

TEST_F(ColumnsDialogTest, AsksOnceWhatAColumnIsAndKeepsItForTheHeader)
{
    const QString file = write("mai.csv", kUnknownUnit);
    const int times = answered(file, [&](ColumnsDialog& dialog) {
        EXPECT_FALSE(mayImport(dialog));
        EXPECT_TRUE(missing(dialog).contains("consumption")) << missing(dialog).toStdString();
        QComboBox* unit = choice(dialog, "Verbrauch");
        ASSERT_NE(unit, nullptr);
        EXPECT_EQ(choice(dialog, "Uhrzeit")->currentData().toString(), "start");
        choose(dialog, "Verbrauch", "l_per_100km");
        EXPECT_TRUE(mayImport(dialog)) << missing(dialog).toStdString();
        QTest::keyClick(&dialog, Qt::Key_I, Qt::AltModifier);
    });
    EXPECT_EQ(times, 1);
    ASSERT_EQ(runs(), 4U) << message().toStdString();
    EXPECT_EQ(window->document()->study().runs.front().consumption->value, 8.41);
    QString next = kUnknownUnit;
    next.replace("09.05.2026", "10.05.2026");
    EXPECT_EQ(answered(write("juni.csv", next.toUtf8()), reject), 0) << "it was said already";
    EXPECT_EQ(runs(), 8U) << message().toStdString();
    EXPECT_EQ(answered(file, reject), 0);
    EXPECT_TRUE(message().contains("there already")) << message().toStdString();
}

TEST_F(ColumnsDialogTest, CancelledImportsNothingAndOursIsNotAsked)
{
    EXPECT_EQ(answered(write("mai.csv", kUnknownUnit), reject), 1);
    EXPECT_EQ(runs(), 0U);
    const QString ours = write("ours.csv", "start,configuration,direction,l_per_100km\n"
                                           "2026-05-09T05:40,A,out,8.41\n"
                                           "2026-05-09T05:47,A,back,8.22\n");
    EXPECT_EQ(answered(ours, reject), 0);
    EXPECT_EQ(runs(), 2U) << message().toStdString();
}

TEST_F(ColumnsDialogTest, AsksWhichComesFirstDayOrMonth)
{
    const QString file = write("dates.csv", "Config,Direction,Start,MPG (US)\n"
                                            "A,out,5/9/2026 5:40 AM,28.0\n"
                                            "A,return,5/9/2026 5:47 AM,28.1\n");
    answered(file, [&](ColumnsDialog& dialog) {
        EXPECT_FALSE(mayImport(dialog));
        auto* dates = dialog.findChild<QComboBox*>("orderOfDates");
        ASSERT_TRUE(dates->isVisible());
        dates->setFocus();
        QTest::keyClick(dates, Qt::Key_Down);
        QTest::keyClick(dates, Qt::Key_Down);
        EXPECT_TRUE(mayImport(dialog)) << missing(dialog).toStdString();
        dialog.findChild<QPushButton*>("importColumns")->click();
    });
    ASSERT_EQ(runs(), 2U) << message().toStdString();
    EXPECT_EQ(core::formatDate(window->document()->study().runs.front().start), "2026-05-09");
}

TEST_F(ColumnsDialogTest, ShowsNoConsumptionWhileItIsHidden)
{
    ASSERT_TRUE(window->document()->setBlind(true));
    const QString file = write("blind.csv", "Config,Richtung,Start,Consumo (l/100km),My own,Notes\n"
                                            "A,out,5/9/2026 5:40,8.4137,8.5137,wet\n"
                                            "A,return,5/9/2026 5:47,8.2137,8.6137,\n");
    const int asked = answered(file, [&](ColumnsDialog& dialog) {
        QStringList cells;
        const auto* table = dialog.findChild<QTableWidget*>();
        for (int row = 1; row < table->rowCount(); ++row)
            for (int column = 0; column < table->columnCount(); ++column)
                cells << (table->item(row, column) ? table->item(row, column)->text() : QString());
        EXPECT_EQ(cells.join(u'|').toStdString(), "A|out|5/9/2026 5:40|hidden|hidden|wet|"
                                                  "A|return|5/9/2026 5:47|hidden|hidden|");
        EXPECT_FALSE(everythingSaid(dialog).join(u' ').contains("137"));
        reject(dialog);
    });
    EXPECT_EQ(asked, 1);
}

TEST_F(ColumnsDialogTest, ASheetWhoseHeaderSaysNothingCanBeNamedColumnByColumn)
{
    const QString file = write("letters.csv", "w,x,y,z\n"
                                              "05:40,A,out,8.41\n"
                                              "05:47,A,back,8.22\n");
    answered(file, [&](ColumnsDialog& dialog) {
        EXPECT_FALSE(mayImport(dialog));
        const std::pair<const char*, const char*> meanings[]{
            {"w", "start"}, {"x", "configuration"}, {"y", "direction"}, {"z", "l_per_100km"}};
        for (const auto& [header, column] : meanings) {
            QComboBox* box = choice(dialog, header);
            ASSERT_NE(box, nullptr) << header;
            for (int i = 0; i < box->count() && box->currentData().toString() != column; ++i)
                QTest::keyClick(box, Qt::Key_Down);
            QCoreApplication::processEvents();
        }
        EXPECT_TRUE(mayImport(dialog)) << missing(dialog).toStdString();
        if (mayImport(dialog))
            dialog.accept();
        else
            dialog.reject();
    });
    EXPECT_EQ(runs(), 2U) << message().toStdString();
}

} // namespace
} // namespace bothways::app::tests
