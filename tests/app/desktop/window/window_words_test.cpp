// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_files.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/recordings/recording_import_dialog.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/import_problems_dialog.h"
#include "app/desktop/window/recordings_desk.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/everything_said.h"
#include "tests/app/desktop/support/german.h"

#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QAction>
#include <QComboBox>
#include <QDialog>
#include <QDockWidget>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QRegularExpression>
#include <QScrollBar>
#include <QTextEdit>

#include <set>

// What the window's parts say, to those who read German and to those who cannot see them.
namespace bothways::app::tests {
namespace {

/// The demo day as a German driver keeps it: what people name is German too.
core::Study germanDay()
{
    const auto demo = makeDemoStudy("vorlage");
    EXPECT_TRUE(demo);
    core::Study study = demo.value()->study();
    const auto german = [](const std::string& name) -> std::string {
        return name == "out" ? "hin" : name == "return" ? "zurück" : name;
    };
    for (core::Run& run : study.runs) {
        run.direction = german(run.direction);
        run.notes.clear();
        for (core::Mark& mark : run.marks)
            mark.words.clear();
        if (run.discard)
            run.discard->evidence = "Ampel";
    }
    study.properties.name = "Stromerzeuger am Deich";
    study.properties.notes.clear();
    study.properties.noise_from.clear();
    return study;
}

/// A number with an English decimal point, a date as files have it; what a text is about, for the
/// failure.
QString notGerman(const QString& text)
{
    // 09.05.2026, 0.1.0 and 1.234 (thousands) are no decimal points.
    static const QRegularExpression point("(?<![\\d.,])(\\d+)\\.(\\d+)(?![\\d.])");
    static const QRegularExpression iso("\\d{4}-\\d\\d-\\d\\d");
    static const QRegularExpression english(
        "\\b(the|and|of|with|without|is|are|runs|not|out|return|pairs|than)\\b");
    auto found = point.globalMatch(text);
    while (found.hasNext()) {
        const auto match = found.next();
        const bool thousands = match.captured(2).size() == 3 && match.captured(1) != "0";
        if (!thousands)
            return match.captured();
    }
    for (const QRegularExpression& wrong : {iso, english})
        if (const auto match = wrong.match(text); match.hasMatch())
            return match.captured();
    return {};
}

/// The file dialogs are Qt's own.
bool isQtsOwn(const QWidget* part)
{
    for (; part; part = part->parentWidget())
        if (part->inherits("QFileDialog") || part->inherits("QPrintDialog"))
            return true;
    return false;
}

/// Names of files, cells of files, and what Qt says of its own parts.
bool isAFilesOrQts(const QString& text)
{
    static const QRegularExpression files("\\.(bothways|csv|html|pdf)\\b|/Documents/");
    return text.contains(files) || text.contains("   ") || text.contains("the dock widget");
}

class WindowWords : public WindowTest {
protected:
    /// The demo, with its recordings.
    void openTheDemo()
    {
        window->openDemo();
        settle();
        waitFor([&] { return !window->isLoading(); });
    }
    /// Dialogs that are no page of their own, each opened and looked at.
    void onOtherDialogs(const std::function<void(const QString&, QWidget&)>& look)
    {
        const auto lookAt = [&](const QString& name) {
            QCoreApplication::processEvents();
            for (QDialog* dialog : window->findChildren<QDialog*>())
                if (dialog->isVisible()) {
                    if (!isQtsOwn(dialog))
                        look(name, *dialog);
                    dialog->reject();
                }
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        };
        for (const char* name : {"rename", "compare", "keys", "about", "export", "report", "open",
                                 "newStudyIn", "import", "importRecording", "rig"}) {
            QAction* action = window->action(name);
            if (!action)
                continue;
            action->trigger();
            lookAt(name);
        }
        window->importRecording(QString(BOTHWAYS_SOURCE_DIR) +
                                "/sample_data/levee_generator_traces/run_01.csv");
        waitFor([&] {
            auto* start = window->findChild<QWidget*>("startImport");
            return start && start->isEnabled();
        });
        lookAt("recordingImport");
        if (!window->document()->recordings().empty()) {
            window->recordings()->cut(window->document()->recordings().front().id);
            lookAt("cut");
        }
        window->importSheet(write("bad.csv", "run,configuration,direction,start,l_per_100km\n"
                                             "91,A,x,2026-05-09T05:40,nan\n"));
        lookAt("importProblems");
    }
};

/// A part that people work with, and none that Qt makes within one.
bool isControl(const QWidget& part)
{
    if (part.objectName().startsWith("qt_") || part.inherits("QScrollBar") ||
        part.inherits("QTableCornerButton") || part.inherits("QHeaderView") ||
        part.inherits("QComboBoxPrivateContainer") || part.inherits("QComboBoxListView") ||
        part.objectName().startsWith("Scroll") || part.inherits("QSizeGrip"))
        return false;
    if (part.isHidden() && part.testAttribute(Qt::WA_WState_ExplicitShowHide))
        return false; // gets its words when it is needed
    if (const auto* label = qobject_cast<const QLabel*>(&part); label && label->text().isEmpty())
        return false;
    const bool isGivenWords =
        part.inherits("QAbstractButton") || part.inherits("bothways::app::ChannelTile");
    if (isGivenWords && !part.isVisible()) // they come with what is shown
        return false;
    const QWidget* parent = part.parentWidget();
    if (parent && (parent->inherits("QAbstractSpinBox") || parent->inherits("QDialogButtonBox") ||
                   parent->inherits("QLineEdit") || parent->inherits("QComboBox") ||
                   parent->inherits("QDockWidget") || parent->inherits("QTabBar") ||
                   parent->inherits("QFileDialog")))
        return false;
    return part.inherits("QAbstractButton") || part.inherits("QComboBox") ||
           part.inherits("QLineEdit") || part.inherits("QAbstractSpinBox") ||
           part.inherits("QAbstractSlider") || part.inherits("QAbstractItemView") ||
           part.inherits("QTextEdit") || part.inherits("QProgressBar") ||
           part.inherits("QGroupBox") || part.inherits("QDockWidget") || part.inherits("QDialog") ||
           part.inherits("QCustomPlot") ||
           (part.focusPolicy() & Qt::TabFocus && !part.inherits("QScrollArea") &&
            !part.inherits("QTabBar") && !part.inherits("QTabWidget") && !part.isWindow());
}

QString nameHeard(QWidget& part)
{
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(&part);
    return heard ? heard->text(QAccessible::Name) : part.accessibleName();
}

TEST_F(WindowWords, EveryControlOnEveryPageHasANameForThoseWhoCannotSeeIt)
{
    preferences.setMoreFields(true);
    std::set<std::string> nameless;
    int named = 0;
    const auto look = [&](const QString&, QWidget& shown) {
        QList<QWidget*> parts = shown.findChildren<QWidget*>();
        parts += &shown;
        for (QWidget* part : parts) {
            if (!isControl(*part) || isQtsOwn(part))
                continue;
            if (nameHeard(*part).trimmed().isEmpty())
                nameless.insert((QString(part->metaObject()->className()) + " '" +
                                 part->objectName() + "' in '" +
                                 (part->parentWidget() ? part->parentWidget()->objectName() : "") +
                                 "' of " + shown.objectName())
                                    .toStdString());
            else
                ++named;
        }
    };
    look("start", *window);
    openTheDemo();
    onEveryPage(*window, look);
    onOtherDialogs(look);
    std::string all;
    for (const std::string& one : nameless)
        all += one + '\n';
    EXPECT_TRUE(nameless.empty()) << nameless.size() << " without a name:\n" << all;
    EXPECT_GT(named, 1000) << "the walk finds nothing";
}

TEST_F(WindowWords, InGermanNoNumberHasAPointNoDateIsAFilesAndNothingIsEnglish)
{
    const German german(preferences);
    const core::Study day = germanDay();
    window = std::make_unique<MainWindow>(preferences, clock());
    window->show();
    std::set<std::string> wrong;
    const auto look = [&](const QString& page, QWidget& part) {
        for (const QString& text : everythingSaid(part))
            if (!isAFilesOrQts(text))
                if (const QString what = notGerman(text); !what.isEmpty())
                    wrong.insert(page.toStdString() + ": '" + what.toStdString() + "' in '" +
                                 text.left(160).toStdString() + "'");
    };
    look("start", *window);
    window->newStudy();
    settle();
    look("a new study", *window);
    ASSERT_NE(window->document(), nullptr);
    ASSERT_TRUE(window->document()->importRuns(day, "tag.csv"));
    ASSERT_TRUE(window->document()->setProperties(day.properties));
    settle();
    waitFor([&] { return !window->isLoading(); });
    onEveryPage(*window, look);
    onOtherDialogs(look);
    std::string all;
    for (const std::string& one : wrong)
        all += one + '\n';
    EXPECT_TRUE(wrong.empty()) << wrong.size() << " texts:\n" << all;
}

TEST_F(WindowWords, PropertiesAreTypedAsGermansWriteNumbersAndDates)
{
    const German german(preferences);
    window = std::make_unique<MainWindow>(preferences, clock());
    window->show();
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const auto edit = [&](const char* field) {
        return window->findChild<QDialog*>("studyProperties")->findChild<QLineEdit*>(field);
    };
    ASSERT_TRUE(window->showPage("properties"));
    ASSERT_NE(openDialog("studyProperties"), nullptr);
    edit("date")->setText("9.5.2026");
    edit("noise")->setText("0,9; 21");
    edit("cold_start")->setText("09.05.2026 05:20");
    openDialog("studyProperties")->accept();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const core::StudyProperties kept = study().properties;
    EXPECT_EQ(kept.date, "2026-05-09");
    ASSERT_TRUE(kept.noise);
    ASSERT_TRUE(window->showPage("properties"));
    ASSERT_NE(openDialog("studyProperties"), nullptr);
    EXPECT_EQ(edit("date")->text(), "09.05.2026");
    EXPECT_EQ(edit("noise")->text(), "0,9; 21");
    EXPECT_TRUE(edit("cold_start")->text().startsWith("09.05.2026 05:20"))
        << edit("cold_start")->text().toStdString();
    openDialog("studyProperties")->accept();
    EXPECT_EQ(study().properties, kept);
}

} // namespace
} // namespace bothways::app::tests
