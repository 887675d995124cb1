// For builds with AddressSanitizer: what the libraries that draw keep until the end is no leak of ours.
extern "C" const char* __lsan_default_suppressions();

// NOLINTNEXTLINE(bugprone-reserved-identifier): the sanitizer asks for it by this name
extern "C" const char* __lsan_default_suppressions() {
    return "leak:libfontconfig.so\nleak:libpango\n";
}
