// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/written_files.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/termination.h"

#include <QApplication>
#include <QBuffer>
#include <QCommandLineParser>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QIcon>
#include <QImage>
#include <QTemporaryDir>
#include <QTextStream>

#include <algorithm>
#include <csignal>
#include <memory>

using namespace bothways::app;

namespace {

constexpr const char* kPictureMark = "Bothways window"; // of a picture that may be written over
constexpr int kLongestAnswer_ms = 60'000;

struct Program {
    Q_DECLARE_TR_FUNCTIONS(Program)
};

struct Options {
    QCommandLineOption picture{"picture", Program::tr("Paint the window into FILE (PNG) and end."),
                               Program::tr("FILE")};
    QCommandLineOption page{"page",
                            Program::tr("Show one part of the window first: %1.")
                                .arg(MainWindow::pageNames().join(", ")),
                            Program::tr("NAME")};
    QCommandLineOption theme{"theme", Program::tr("Colours: system, light or dark."),
                             Program::tr("NAME")};
    QCommandLineOption largeText{"large-text", Program::tr("Large text.")};
    QCommandLineOption size{"size", Program::tr("Size of the picture, 1280x800."),
                            Program::tr("WxH", "width and height"), "1280x800"};
    QCommandLineOption demo{"demo", Program::tr("Open the demo study.")};
    QCommandLineOption settings{"settings", Program::tr("Keep preferences in FILE (INI)."),
                                Program::tr("FILE")};

    [[nodiscard]] QList<QCommandLineOption> all() const
    {
        return {picture, page, theme, largeText, size, demo, settings};
    }
};

int wrongUse(const QString& sentence)
{
    QTextStream(stderr) << "bothways-desktop: " << sentence << '\n';
    return 2;
}

/// Waits until the answer about the study is there, and what is shown of its recordings.
bool settled(const MainWindow& window)
{
    QElapsedTimer waited;
    waited.start();
    while (window.isLoading()) {
        if (waited.hasExpired(kLongestAnswer_ms))
            return false;
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }
    QCoreApplication::processEvents();
    return true;
}

int paint(MainWindow& window, const QString& page, const QSize& size, const QString& file)
{
    if (!settled(window) || (!page.isEmpty() && !window.showPage(page)) || !settled(window)) {
        QTextStream(stderr) << "bothways-desktop: " << Program::tr("nothing to paint") << '\n';
        return 4;
    }
    for (int i = 0; i < 5; ++i) // layouts that follow layouts
        QCoreApplication::processEvents();
    QImage image = window.picture(size).toImage();
    image.setText("Software", kPictureMark); // stands near the beginning of the file
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "PNG");
    const bothways::core::Outcome written =
        writeFile(file, bytes, {}, IfThere::refused, kPictureMark);
    if (written)
        return 0;
    QTextStream(stderr) << "bothways-desktop: "
                        << Program::tr("%1: the picture cannot be written: %2")
                               .arg(file, whyNotWritten(Language(), written.error()))
                        << '\n';
    return 4;
}

/// Names and icon; the platform plugin where a picture needs no screen.
void nameTheProgram()
{
    QCoreApplication::setOrganizationName("Bothways");
    QCoreApplication::setApplicationName("bothways-desktop");
    QCoreApplication::setApplicationVersion(BOTHWAYS_VERSION);
    QGuiApplication::setApplicationDisplayName("Bothways");
    QGuiApplication::setDesktopFileName("bothways");
    QGuiApplication::setWindowIcon(QIcon(":/icons/bothways.svg"));
}

void read(QCommandLineParser& parser, const Options& options, const QApplication& application)
{
    parser.setApplicationDescription(Program::tr(
        "Logs out-and-back fuel-economy test runs and says whether there is an effect."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(Program::tr("FILE"),
                                 Program::tr("A study (.bothways) or a run sheet (CSV)."),
                                 QLatin1Char('[') + Program::tr("FILE") + QLatin1Char(']'));
    parser.addOptions(options.all());
    parser.process(application);
}

/// Where preferences are kept, the language of all that is said after this among them: looked up
/// before the command line is read in earnest. Empty: in the usual place.
QString settingsAmong(const QStringList& arguments)
{
    QCommandLineParser parser;
    const Options options;
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOptions(options.all());
    parser.parse(arguments);
    return parser.value(options.settings);
}

/// @return  what is wrong with them; empty: nothing
QString takeChoices(const QCommandLineParser& parser, const Options& options,
                    Preferences& preferences)
{
    if (parser.isSet(options.theme)) {
        const QStringList names{"system", "light", "dark"};
        const auto index = names.indexOf(parser.value(options.theme));
        if (index < 0)
            return Program::tr("--theme: expected system, light or dark");
        preferences.setTheme(static_cast<ThemeChoice>(index));
    }
    if (parser.isSet(options.largeText))
        preferences.setLargeText(true);
    if (parser.isSet(options.page) && !MainWindow::pageNames().contains(parser.value(options.page)))
        return Program::tr("--page: expected one of %1").arg(MainWindow::pageNames().join(", "));
    return {};
}

/// "1280x800"; an empty size for anything else.
QSize sizeFrom(const QString& text)
{
    const QStringList sides = text.split('x');
    if (sides.size() != 2 || sides[0].toInt() < 200 || sides[1].toInt() < 200)
        return {};
    return {sides[0].toInt(), sides[1].toInt()};
}

} // namespace

int main(int argc, char** argv)
{
    std::signal(SIGXFSZ, SIG_IGN); // a file that grew too large is said where it is written
    std::signal(SIGPIPE, SIG_IGN);
    const bool painting = std::any_of(
        argv, argv + argc, [](const char* a) { return qstrncmp(a, "--picture", 9) == 0; });
    if (painting && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen"); // a picture needs no screen
    QApplication application(argc, argv);
    nameTheProgram();
    // A picture is of the program, not of its owner's habits.
    const QTemporaryDir scratch;
    QString settings = settingsAmong(QApplication::arguments());
    if (settings.isEmpty() && painting)
        settings = scratch.filePath("preferences.ini");
    const std::unique_ptr<Preferences> preferences = settings.isEmpty()
                                                         ? std::make_unique<Preferences>()
                                                         : std::make_unique<Preferences>(settings);
    installTranslation(application, *preferences);
    QCommandLineParser parser;
    const Options options;
    read(parser, options, application);
    if (const QString fault = takeChoices(parser, options, *preferences); !fault.isEmpty())
        return wrongUse(fault);

    followAppearance(application, *preferences);
    MainWindow window(*preferences);
    QSize size;
    if (painting) {
        size = sizeFrom(parser.value(options.size));
        if (size.isEmpty())
            return wrongUse(Program::tr("--size: expected WIDTHxHEIGHT, such as 1280x800"));
        window.resize(size);
    }
    const Termination termination;
    QObject::connect(&termination, &Termination::asked, &window, &MainWindow::endAtOnce);
    window.show();
    if (parser.isSet(options.demo))
        window.openDemo();
    QString file = parser.positionalArguments().value(0);
    if (painting && QFileInfo(file).isFile()) { // a sheet would leave a study behind
        const QString copy = scratch.filePath(QFileInfo(file).fileName());
        if (QFile::copy(file, copy))
            file = copy;
    }
    if (!file.isEmpty() && !window.openFile(file) && painting)
        return wrongUse(Program::tr("%1: cannot be opened").arg(file));
    if (painting)
        return paint(window, parser.value(options.page), size, parser.value(options.picture));
    return QApplication::exec();
}
