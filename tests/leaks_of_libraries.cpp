// For builds with AddressSanitizer: what the libraries that draw keep until the end is no leak of ours, and is not
// told. NOLINTBEGIN(bugprone-reserved-identifier): the sanitizer asks for them by these names
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_options();

extern "C" const char* __lsan_default_suppressions() {
    return "leak:libfontconfig.so\nleak:libpango\n";
}

extern "C" const char* __lsan_default_options() {
    return "print_suppressions=0";
}
// NOLINTEND(bugprone-reserved-identifier)
