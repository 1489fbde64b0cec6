// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/termination.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLineEdit>
#include <QTest>
#include <QTimer>

#include <sqlite3.h>

#include <sys/resource.h>

#include <csignal>

namespace bothways::app::tests {
namespace {

/// What goes wrong around an open window: nothing that was typed may be lost.
class WindowFaults : public WindowTest {
protected:
    void SetUp() override
    {
        click("newStudy");
        ASSERT_NE(window->document(), nullptr);
        drive("8.41");
        settle();
        file = window->document()->path();
    }
    /// An end that was ordered comes to its end: no dialog of a later test would stay else.
    void TearDown() override
    {
        QCoreApplication::processEvents();
        QTimer::singleShot(0, [] { QCoreApplication::exit(); });
        QApplication::exec();
    }

    [[nodiscard]] QString typedConsumption() const
    {
        return window->page()->form().findChild<QLineEdit*>("consumption")->text();
    }

    void reopen()
    {
        window.reset();
        QCoreApplication::processEvents();
        window = std::make_unique<MainWindow>(preferences, clock());
        window->show();
        ASSERT_TRUE(window->openFile(file));
    }

    QString file;
};

TEST_F(WindowFaults, AWrongFileClosesNothing)
{
    const QString wrong = write("holiday.bothways", "SQLite format 3");
    EXPECT_FALSE(window->openFile(wrong));
    ASSERT_NE(window->document(), nullptr) << "the open study went";
    EXPECT_EQ(window->document()->path(), file);
    EXPECT_TRUE(message().contains("holiday.bothways")) << message().toStdString();
    EXPECT_FALSE(window->openFile(path("nowhere.csv")));
    ASSERT_NE(window->document(), nullptr);
    EXPECT_TRUE(window->openFile(file)) << "it is open already";
    EXPECT_EQ(study().runs.size(), 1U);
}

TEST_F(WindowFaults, WhatIsTypedOutlivesTheEndOfASession)
{
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    fill("notes", "wet road");
    window->endAtOnce();
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "a question that nobody answers";
    reopen();
    EXPECT_EQ(study().runs.size(), 1U) << "it was not saved by nobody's order";
    EXPECT_EQ(typedConsumption(), "8.29");
    EXPECT_TRUE(message().contains("being typed")) << message().toStdString();
    ASSERT_TRUE(window->page()->form().save());
    EXPECT_EQ(study().runs.back().notes, "wet road");
    reopen();
    EXPECT_FALSE(window->page()->form().isUnsaved()) << "saved, and offered again";
}

TEST_F(WindowFaults, AnOrderedEndAsksNobodyAndEndsTheEventLoop)
{
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    bool asked = false;
    QTimer watch;
    QObject::connect(&watch, &QTimer::timeout, [&asked] {
        if (QWidget* question = QApplication::activeModalWidget()) {
            asked = true;
            question->close();
            QApplication::exit();
        }
    });
    watch.start(20);
    QTimer::singleShot(0, window.get(), [this] { window->endAtOnce(); });
    QApplication::exec();
    EXPECT_FALSE(asked) << "a question that nobody answers";
    EXPECT_FALSE(window->isVisible());
    EXPECT_EQ(preferences.takeInterruptedStudy(), QFileInfo(file).absoluteFilePath());
    reopen();
    EXPECT_EQ(typedConsumption(), "8.29");
    window->page()->form().dropDraft();
}

TEST_F(WindowFaults, ASessionManagerEndsTheProgramWithoutAQuestion)
{
    const Termination termination;
    QObject::connect(&termination, &Termination::asked, window.get(), &MainWindow::endAtOnce);
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    QTimer::singleShot(0, window.get(), [] {
        if (QWidget* question = QApplication::activeModalWidget())
            question->close();
    });
    QEvent end(QEvent::Quit);
    QCoreApplication::sendEvent(qApp, &end);
    EXPECT_FALSE(window->isVisible()) << "it asks, and keeps the session from ending";
    reopen();
    EXPECT_EQ(typedConsumption(), "8.29");
    window->page()->form().dropDraft();
}

TEST_F(WindowFaults, ASessionThatMayEndKeepsWhatIsTypedAndOneThatGoesOnForgetsIt)
{
    const QString absolute = QFileInfo(file).absoluteFilePath();
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    window->keepForNextTime();
    EXPECT_TRUE(window->isVisible());
    EXPECT_FALSE(preferences.formDraft(file).isEmpty());
    EXPECT_EQ(window->argumentsToGoOn(), QStringList{absolute});
    ASSERT_TRUE(window->page()->form().save());
    ASSERT_TRUE(window->closeStudy()); // the end was called off, and the user is done with it
    EXPECT_EQ(preferences.takeInterruptedStudy(), "");
    EXPECT_EQ(window->argumentsToGoOn(), QStringList());

    ASSERT_TRUE(window->openFile(file));
    window->openRoadside();
    EXPECT_EQ(window->argumentsToGoOn(), (QStringList{"--roadside", absolute}));
    preferences.setInterruptedStudy(path("of_another_window.bothways"));
    ASSERT_TRUE(window->closeStudy());
    write("of_another_window.bothways", "x");
    EXPECT_EQ(preferences.takeInterruptedStudy(), path("of_another_window.bothways"));
    window->openDemo();
    EXPECT_EQ(window->argumentsToGoOn(), QStringList()) << "of the demo nothing is kept";
}

TEST_F(WindowFaults, WhatIsTypedOutlivesACrash)
{
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    press(Qt::Key_Tab); // left the field
    EXPECT_FALSE(preferences.formDraft(file).isEmpty());
    window->page()->form().dropDraft();
    EXPECT_TRUE(preferences.formDraft(file).isEmpty());
}

TEST_F(WindowFaults, ADraftThatIsNoneIsNoDraft)
{
    for (const char* bytes : {"", "{}", "[1]", "{\"fields\":7}", "\xff\xfe"}) {
        preferences.setFormDraft(file, bytes);
        reopen();
        EXPECT_FALSE(window->page()->form().isUnsaved()) << bytes;
    }
}

TEST_F(WindowFaults, ASignalEndsTheProgramInOrder)
{
    const Termination termination;
    int asked = 0;
    QObject::connect(&termination, &Termination::asked, [&asked] { ++asked; });
    std::raise(SIGTERM);
    EXPECT_TRUE(waitFor([&] { return asked == 1; }));
}

TEST_F(WindowFaults, ADiskThatFillsDuringEntryLosesNothing)
{
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    rlimit before{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit full = before;
    full.rlim_cur = 512; // no journal, no page
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &full), 0);
    press(Qt::Key_Return);
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &before), 0);
    std::signal(SIGXFSZ, SIG_DFL);
    EXPECT_EQ(study().runs.size(), 1U);
    EXPECT_TRUE(message().contains("nothing was changed")) << message().toStdString();
    EXPECT_EQ(typedConsumption(), "8.29");
    ASSERT_TRUE(window->page()->form().save()) << "there is room again";
    EXPECT_EQ(study().runs.size(), 2U);
}

TEST_F(WindowFaults, ASecondProgramThatWritesIsWaitedForAndSaid)
{
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(file.toUtf8().constData(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    press(Qt::Key_Return);
    EXPECT_TRUE(message().contains("another program")) << message().toStdString();
    EXPECT_EQ(typedConsumption(), "8.29");
    sqlite3_close(other);
    ASSERT_TRUE(window->page()->form().save());
    EXPECT_EQ(study().runs.size(), 2U);
}

TEST_F(WindowFaults, AFileThatIsPulledAwayIsSaidAndWhatWasTypedStays)
{
    press(Qt::Key_N, Qt::ControlModifier);
    fill("consumption", "8.29");
    ASSERT_TRUE(QFile::rename(file, file + ".elsewhere"));
    press(Qt::Key_Return);
    EXPECT_TRUE(message().contains("no longer")) << message().toStdString();
    EXPECT_EQ(typedConsumption(), "8.29");
    ASSERT_TRUE(QFile::rename(file + ".elsewhere", file));
    ASSERT_TRUE(window->page()->form().save());
    EXPECT_EQ(study().runs.size(), 2U);
}

} // namespace
} // namespace bothways::app::tests
