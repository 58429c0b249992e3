package slipway.web;

import org.springframework.boot.autoconfigure.SpringBootApplication;

/** What the container starts from: everything in this package and below. */
@SpringBootApplication
public class WebApplication {}
